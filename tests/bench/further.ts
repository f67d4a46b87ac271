import { assessSurvey } from "../../src/analysis/assess.ts";
import type { Assessment, Verdict } from "../../src/analysis/assessment.ts";
import { normals, seededRandom } from "../../src/analysis/statistics/random.ts";
import type { BacklashReading, Inspection } from "../../src/inspection/schema.ts";
import { type SimulatedSlide, simulateSlide } from "../simulator/simulatedSlide.ts";

const FIRST_STATIONS = 7;
const REPEATS = 2;
/** Where neither way has decided by then, it is counted with so many readings. */
const MOST = 80;

interface Outcome {
  readonly readings: number;
  readonly verdict: Verdict;
}

/** Reads a simulated slide anywhere, by push and pull, with the scatter and graduation that it has. */
function readerOf({ inspection, truth }: SimulatedSlide, seed: number) {
  const normal = normals(seededRandom(seed));
  const resolution = inspection.surveys[0].indicator?.resolution ?? 0.01;
  const rounded = (value: number): number => Math.round(value / resolution) * resolution;
  return {
    backlash: (position: number): BacklashReading => ({
      position,
      backlash: rounded(truth.backlash(position) + truth.repeatability * normal()),
    }),
    endFloat: (): number => Math.max(0, rounded(truth.endFloat + truth.repeatability * normal())),
  };
}

function assessed(
  inspection: Inspection,
  readings: readonly BacklashReading[],
  endFloat: readonly number[],
): Assessment {
  const survey = { ...inspection.surveys[0], method: "push-pull" as const, readings, endFloat };
  const outcome = assessSurvey({ ...inspection, surveys: [survey] }, survey.id);
  if (!outcome.ok) throw new Error(outcome.problem.what);
  return outcome.value;
}

function decided(verdict: Verdict): boolean {
  return verdict !== "measure-more" && verdict !== "no-verdict";
}

function evenly(count: number, travel: number): readonly number[] {
  return Array.from({ length: count }, (_, i) => (i / (count - 1)) * travel);
}

/** The program says what to read next, until it decides. */
function byChoice(slide: SimulatedSlide, seed: number): Outcome {
  const reader = readerOf(slide, seed);
  const travel = slide.inspection.slide.travel.to;
  const places = evenly(FIRST_STATIONS, travel);
  const readings = [...places, ...places.toReversed()].map(reader.backlash);
  const endFloat = [reader.endFloat(), reader.endFloat()];
  for (;;) {
    const { verdict, nextReadings } = assessed(slide.inspection, readings, endFloat);
    const taken = readings.length + endFloat.length - 2;
    const [next] = nextReadings;
    if (decided(verdict) || taken >= MOST || next === undefined) return { readings: taken, verdict };
    if ("endFloat" in next) endFloat.push(reader.endFloat());
    else readings.push(reader.backlash(next.position));
  }
}

/** A grid of 7, then 8, 9 … stations, each read twice, until it decides. */
function byGrid(slide: SimulatedSlide, seed: number): Outcome {
  for (let count = FIRST_STATIONS; ; count++) {
    const reader = readerOf(slide, seed);
    const places = evenly(count, slide.inspection.slide.travel.to);
    const readings = [...places, ...places.toReversed()].map(reader.backlash);
    const { verdict } = assessed(slide.inspection, readings, [reader.endFloat(), reader.endFloat()]);
    if (decided(verdict) || readings.length >= MOST) return { readings: readings.length, verdict };
  }
}

/**
 * How many readings a decision takes: the program's own choice of what to read next, against a grid that is made
 * evenly finer. Both start from 7 stations read twice.
 */
export function further(cases: number, base: number): void {
  const start = FIRST_STATIONS * REPEATS;
  const totals = {
    choice: { readings: 0, wrong: 0, decided: 0 },
    grid: { readings: 0, wrong: 0, decided: 0 },
  };
  const ways = { choice: byChoice, grid: byGrid };
  for (let i = 0; i < cases; i++) {
    const slide = simulateSlide(base + i * 7919);
    for (const name of ["choice", "grid"] as const) {
      const { readings, verdict } = ways[name](slide, base + i);
      totals[name].readings += readings;
      if (!decided(verdict)) continue;
      totals[name].decided++;
      if (verdict !== slide.truth.verdict) totals[name].wrong++;
    }
  }
  for (const [name, { readings, wrong, decided: count }] of Object.entries(totals)) {
    console.log(
      `by ${name.padEnd(6)} ${(readings / cases).toFixed(1)} readings a slide, ${start} of them at first; decided ${((100 * count) / cases).toFixed(1)} %, wrong among them ${((100 * wrong) / count).toFixed(1)} %`,
    );
  }
  const more = (name: "choice" | "grid"): number => totals[name].readings - start * cases;
  console.log(
    `choice / grid: ${(totals.choice.readings / totals.grid.readings).toFixed(2)} of all readings, ${(more("choice") / more("grid")).toFixed(2)} of those after the first`,
  );
}
