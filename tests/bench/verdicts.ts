import { screwProfile } from "../../src/analysis/profile/screw.ts";
import { simulateSlide } from "../simulator/simulatedSlide.ts";
import { smoothProfile } from "./plain/smooth.ts";
import { HEADINGS, Score } from "./score.ts";
import { StatedChances } from "./stated.ts";
import { byModel, bySpreadsheet } from "./ways.ts";

const WAYS = {
  spreadsheet: bySpreadsheet,
  plain: byModel(smoothProfile),
  tightspot: byModel(screwProfile),
};

const NAMES_WIDTH = 34;
const FIGURES_WIDTH = 12;

/** How the verdicts fare on simulated slides whose truth is known, in per cent, by shape and number of stations. */
export function verdicts(cases: number, base: number): void {
  const scores = new Map<string, Score>();
  const scoreOf = (name: string): Score => {
    const score = scores.get(name) ?? new Score();
    scores.set(name, score);
    return score;
  };
  const stated = new StatedChances();
  for (let i = 0; i < cases; i++) {
    const slide = simulateSlide(base + i * 7919);
    const { shape, stations } = slide.truth;
    const few = stations < 12 ? " 8–11" : stations < 18 ? "12–17" : "18–25";
    for (const [name, way] of Object.entries(WAYS)) {
      const judgement = way(slide);
      if (name === "tightspot") stated.add(judgement, slide.truth);
      for (const group of ["all", shape, `${few} stations`]) {
        scoreOf(`${group} · ${name}`).add(judgement, slide.truth);
      }
    }
  }
  const figures = (cells: readonly string[]): string =>
    cells.map((cell) => cell.padStart(FIGURES_WIDTH)).join("");
  console.log("".padEnd(NAMES_WIDTH) + figures(HEADINGS));
  for (const name of [...scores.keys()].sort()) {
    console.log(name.padEnd(NAMES_WIDTH) + figures(scoreOf(name).figures()));
  }
  for (const line of stated.lines()) console.log(line);
}
