import type { Assessment } from "../../src/analysis/assessment.ts";
import type { ProfileModel } from "../../src/analysis/profile/draws.ts";
import type { Slide, Survey } from "../../src/inspection/schema.ts";
import { assessed, drawsOf, evenlySpaced, inspectionOf, pushPull } from "./examples.ts";

export const POSITIONS = evenlySpaced(0, 300, 13);

/** Two readings of 0.3 mm at each of thirteen stations, and end float measured as 0.02 mm, finely. */
export const SURVEY = pushPull(
  [...POSITIONS, ...POSITIONS].map((position) => [position, 0.3] as const),
  {
    indicator: { resolution: 1e-6 },
    endFloat: [0.02, 0.02],
  },
);

/** Draws that the survey is made to lead to: even but for what is given at 25 mm and at 150 mm. */
export function model(...given: readonly { readonly tight: number; readonly loose: number }[]): ProfileModel {
  const profiles = given.map(({ tight, loose }) =>
    POSITIONS.map((position) => (position === 25 ? tight : position === 150 ? loose : (tight + loose) / 2)),
  );
  const { positions, draws } = drawsOf(POSITIONS, profiles, 0);
  // The readings do not bear these draws out; a great station effect says that they need not.
  return () => ({
    positions,
    draws: draws.map((draw) => ({ ...draw, stationEffect: 1 })),
    unevenChance: 0.75,
  });
}

/** Draws of a slide whose nut wants adjusting. */
export const ADJUST = model(
  { tight: 0.28, loose: 0.3 },
  { tight: 0.29, loose: 0.33 },
  { tight: 0.3, loose: 0.36 },
);

/** The assessment of the survey, or of another, by known draws. */
export function assess(
  survey: Survey = SURVEY,
  slide: Partial<Slide> = {},
  profile: ProfileModel = ADJUST,
): Assessment {
  return assessed(inspectionOf(survey, slide), profile);
}
