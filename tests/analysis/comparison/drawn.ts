import type { AssessedSurvey } from "../../../src/analysis/assess.ts";
import type { Survey } from "../../../src/inspection/schema.ts";
import { drawsOf, SETTINGS, WELL_COVERED } from "../examples.ts";
import { assess } from "../knownDraws.ts";

const ASSESSMENT = assess();

/**
 * A survey of which the draws are known, each as its lost motion at every position, with end float measured as 0.01 mm
 * and a greatest lost motion of 0.2 mm.
 */
export function drawn(
  positions: readonly number[],
  profiles: readonly (readonly number[])[],
  survey: Partial<Survey> = {},
  part: Partial<AssessedSurvey> = {},
): AssessedSurvey {
  return {
    assessment: { ...ASSESSMENT, settings: SETTINGS, greatest: { value: 0.2, low: 0.2, high: 0.2 } },
    coverage: WELL_COVERED,
    asPairs: false,
    survey: {
      id: "survey",
      taken: "2026-03-14",
      stage: "routine",
      method: "push-pull",
      readings: [],
      ...survey,
    },
    profile: drawsOf(positions, profiles),
    endFloat: { measured: true, draws: new Float64Array(profiles.length).fill(0.01) },
    ...part,
  };
}
