import { assessSurvey } from "../../src/analysis/assess.ts";
import type { Assessment } from "../../src/analysis/assessment.ts";
import type { Coverage } from "../../src/analysis/decide/coverage.ts";
import type { Settings } from "../../src/analysis/decide/settings.ts";
import type { ProfileDraw, ProfileDraws, ProfileModel } from "../../src/analysis/profile/draws.ts";
import type { Random } from "../../src/analysis/statistics/random.ts";
import type { Inspection, Slide, Survey } from "../../src/inspection/schema.ts";

/** A slide of 300 mm of which everything is known and nothing is out of the ordinary. */
export const SETTINGS: Settings = {
  travel: { from: 0, to: 300 },
  workingRange: { from: 0, to: 300 },
  lead: 4,
  pitch: 4,
  limit: 0.15,
  runningClearance: 0.025,
  endFloatAttainable: 0.01,
  engagedLength: 24,
  adjustable: true,
  takeUpLeft: Number.POSITIVE_INFINITY,
  takeUpUsed: 0,
  clearanceNew: 0,
  wearLimit: 0.5,
  holdsLoad: false,
  springHides: false,
};

export const WELL_COVERED: Coverage = { enoughStations: true, gaps: [], unreadEnds: [] };

/** A survey of the given method and readings. */
export function surveyOf(part: Pick<Survey, "method" | "readings"> & Partial<Survey>): Survey {
  return { id: "survey", taken: "2026-03-14", stage: "before-repair", ...part };
}

/** A push–pull survey with an indicator of 0.01 mm, of readings given as position and lost motion. */
export function pushPull(
  readings: readonly (readonly [position: number, backlash: number])[],
  part: Partial<Survey> = {},
): Survey {
  return surveyOf({
    method: "push-pull",
    indicator: { resolution: 0.01 },
    readings: readings.map(([position, backlash]) => ({ position, backlash })),
    ...part,
  });
}

/** An inspection of a slide of 300 mm with a lead of 4 mm, a nut of 24 mm and a limit of 0.15 mm. */
export function inspectionOf(survey: Survey, slide: Partial<Slide> = {}): Inspection {
  return {
    format: "tightspot-inspection",
    version: 1,
    slide: {
      id: "slide",
      name: "Cross slide",
      units: "mm",
      travel: { from: 0, to: 300 },
      screw: { lead: 4 },
      nut: { engagedLength: 24 },
      backlashLimit: 0.15,
      ...slide,
    },
    surveys: [survey],
  };
}

/** The assessment of an inspection's first survey, which must succeed. */
export function assessed(inspection: Inspection, model?: ProfileModel): Assessment {
  const outcome = assessSurvey(inspection, inspection.surveys[0].id, model);
  if (!outcome.ok) throw new Error(outcome.problem.what);
  return outcome.value;
}

/** Draws of the profile written out by hand, each as its lost motion at every position. */
export function drawsOf(
  positions: readonly number[],
  profiles: readonly (readonly number[])[],
  repeatability = 0.004,
): ProfileDraws {
  const draws = profiles.map((backlash): ProfileDraw => {
    const spot = (value: number) => ({ position: positions[backlash.indexOf(value)], backlash: value });
    return {
      backlash: Float64Array.from(backlash),
      tight: spot(Math.min(...backlash)),
      loose: spot(Math.max(...backlash)),
      repeatability,
      stationEffect: 0,
    };
  });
  return { positions: Float64Array.from(positions), draws, unevenChance: 1 };
}

/** Gives out the numbers written down, again and again: randomness whose outcome can be worked out by hand. */
export function repeating(...numbers: readonly number[]): Random {
  let at = 0;
  return () => numbers[at++ % numbers.length];
}

/** Evenly spaced places, both ends included. */
export function evenlySpaced(from: number, to: number, count: number): readonly number[] {
  return Array.from({ length: count }, (_, i) => from + ((to - from) * i) / (count - 1));
}
