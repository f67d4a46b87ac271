import { assessSurvey } from "../../src/analysis/assess.ts";
import { normals, seededRandom } from "../../src/analysis/statistics/random.ts";
import type { Inspection } from "../../src/inspection/schema.ts";

const RUNS = 15;
/** Until the engine has compiled what it runs often; its compiler is at work for some hundred assessments. */
const WARM_UP_RUNS = 150;

/** How long an assessment takes, as a ratio to a fixed amount of arithmetic in the same run. */
export function speed(): void {
  const yardstick = median(RUNS, RUNS, million);
  console.log(`yardstick, a million exponentials: ${yardstick.toFixed(1)} ms of processor here`);
  for (const [stations, repeats] of [
    [25, 3],
    [25, 6],
    [25, 12],
    [100, 3],
  ] as const) {
    report(`${stations} stations × ${repeats}`, surveyOf(stations, repeats), yardstick, RUNS, WARM_UP_RUNS);
  }
  report("a log of 100,000", surveyOf(100_000, 1), yardstick, 3, 3);
}

function report(name: string, inspection: Inspection, yardstick: number, runs: number, warmUp: number): void {
  const first = processorTime(() => assessSurvey(inspection, "survey"));
  const time = median(runs, warmUp, () => assessSurvey(inspection, "survey"));
  console.log(
    `${name}: ${(time / yardstick).toFixed(1)} yardsticks, ${time.toFixed(0)} ms of processor here (its first run: ${first.toFixed(0)} ms)`,
  );
}

/** Median processor time in milliseconds, after a warm-up. */
function median(runs: number, warmUp: number, work: () => unknown): number {
  for (let i = 0; i < warmUp; i++) work();
  const times = Array.from({ length: runs }, () => processorTime(work));
  return times.sort((a, b) => a - b)[Math.floor(runs / 2)];
}

/** Milliseconds, those of the engine's compiler and collector included. */
function processorTime(work: () => unknown): number {
  const begun = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(begun);
  return (user + system) / 1000;
}

function million(): number {
  let sum = 0;
  for (let i = 0; i < 1_000_000; i++) sum += Math.exp(-i * 1e-6);
  return sum;
}

/** A slide of 400 mm with one worn patch. */
function surveyOf(stations: number, repeats: number): Inspection {
  const normal = normals(seededRandom(1));
  const readings = Array.from({ length: stations * repeats }, (_, i) => {
    const position = (400 * (i % stations)) / (stations - 1);
    const truth = 0.1 + 0.15 * Math.exp(-0.5 * ((position - 180) / 50) ** 2);
    return { position, backlash: Math.round((truth + 0.004 * normal()) * 100) / 100 };
  });
  return {
    format: "tightspot-inspection",
    version: 1,
    slide: {
      id: "slide",
      name: "Slide",
      units: "mm",
      travel: { from: 0, to: 400 },
      screw: { lead: 4 },
      nut: { engagedLength: 40 },
      backlashLimit: 0.15,
    },
    surveys: [
      {
        id: "survey",
        taken: "2026-03-14",
        stage: "before-repair",
        method: "push-pull",
        indicator: { resolution: 0.01 },
        endFloat: [0.01, 0.02],
        readings,
      },
    ],
  };
}
