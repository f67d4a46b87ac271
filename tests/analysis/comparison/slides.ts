import { compareSurveys } from "../../../src/analysis/comparison/compareSurveys.ts";
import type { Comparison } from "../../../src/analysis/comparison/comparison.ts";
import type { Inspection, Slide, Survey } from "../../../src/inspection/schema.ts";
import { evenlySpaced, inspectionOf, pushPull } from "../examples.ts";

/** Thirteen stations read three times, all alike to the graduation of a micrometre. */
export function level(id: string, backlash: number, part: Partial<Survey> = {}): Survey {
  const stations = evenlySpaced(0, 300, 13);
  return pushPull(
    [0, 0.001, -0.001].flatMap((scatter) =>
      stations.map((position) => [position, backlash + scatter] as const),
    ),
    { id, indicator: { resolution: 0.001 }, endFloat: [0.01, 0.01], ...part },
  );
}

/** The same on a screw that has worn by so much in its middle. */
export function worn(id: string, backlash: number, wear: number, part: Partial<Survey> = {}): Survey {
  const survey = level(id, 0, part);
  return {
    ...survey,
    readings: survey.readings.map((reading) => {
      const position = Number(reading.position);
      const share = Math.max(0, 1 - Math.abs(position - 150) / 100);
      const more = backlash + wear * share;
      return { position, backlash: Number((Number(reading.backlash) + more).toFixed(3)) };
    }),
  };
}

export function inspection(
  surveys: readonly Survey[],
  slide: Partial<Slide> = {},
  part: Partial<Inspection> = {},
): Inspection {
  return { ...inspectionOf(level("none", 0), slide), surveys, ...part };
}

export function compared(surveys: readonly Survey[], slide: Partial<Slide> = {}): Comparison {
  const outcome = compareSurveys(inspection(surveys, slide));
  if (!outcome.ok) throw new Error(outcome.problem.what);
  return outcome.value;
}
