import { parseArgs } from "node:util";
import { screwProfile } from "../../src/analysis/profile/screw.ts";
import { simulateSlide } from "../simulator/simulatedSlide.ts";
import { smoothProfile } from "./plain/smooth.ts";
import { HEADINGS, Score } from "./score.ts";
import { byModel, bySpreadsheet } from "./ways.ts";

/**
 * How the verdicts fare on simulated slides whose truth is known.
 *
 *   npm run bench -- [--cases 500] [--full] [--seed 1]
 */
const { values } = parseArgs({
  options: {
    cases: { type: "string", default: "500" },
    full: { type: "boolean", default: false },
    seed: { type: "string", default: "1" },
    ways: { type: "string", default: "" },
  },
});
const cases = values.full ? 5000 : Number(values.cases);
const base = Number(values.seed) * 1_000_003;

const all = {
  spreadsheet: bySpreadsheet,
  plain: byModel(smoothProfile),
  screw: byModel(screwProfile),
};

const wanted = values.ways === "" ? Object.keys(all) : values.ways.split(",");
const scores = new Map<string, Score>();
const scoreOf = (name: string): Score => {
  const score = scores.get(name) ?? new Score();
  scores.set(name, score);
  return score;
};
const time = new Map<string, number>();
for (let i = 0; i < cases; i++) {
  const slide = simulateSlide(base + i * 7919);
  const { truth } = slide;
  for (const [name, way] of Object.entries(all).filter(([each]) => wanted.includes(each))) {
    const begun = performance.now();
    const judgement = way(slide);
    time.set(name, (time.get(name) ?? 0) + performance.now() - begun);
    const few = truth.stations < 12 ? "8–11" : truth.stations < 18 ? "12–17" : "18–25";
    for (const group of ["all", truth.shape, `${few} stations`])
      scoreOf(`${group} · ${name}`).add(judgement, truth);
  }
}
const width = 32;
console.log("".padEnd(width) + HEADINGS.map((heading) => heading.padStart(12)).join(""));
for (const name of [...scores.keys()].sort()) {
  console.log(
    name.padEnd(width) +
      scoreOf(name)
        .figures()
        .map((figure) => figure.padStart(12))
        .join(""),
  );
}
for (const [name, total] of time) console.log(`${name}: ${(total / cases).toFixed(1)} ms a case`);
