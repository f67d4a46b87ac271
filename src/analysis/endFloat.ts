import { mean, sampleStandardDeviation } from "simple-statistics";
import type { Estimate } from "./assessment.ts";
import { estimateOf } from "./estimate.ts";
import type { ProfileDraws } from "./profile/draws.ts";
import { normals, type Random } from "./random.ts";

/** End float is not thought to exceed this where it was not measured, in millimetres. */
const GREATEST_UNMEASURED = 0.1;

export interface EndFloat {
  readonly measured: boolean;
  /** One value for each draw of the profile, in millimetres. */
  readonly draws: Float64Array;
  /** Standard uncertainty of the measured mean; 0 where it was not measured. */
  readonly standard: number;
}

/**
 * End float, draw by draw. Measured: the mean of its readings, whose scatter is theirs or the survey's
 * repeatability, whichever is greater, and which share one rounding. Not measured: anywhere between nothing and the
 * lesser of 0.1 mm and the least lost motion of the draw.
 */
export function endFloatOf(
  measured: readonly number[] | undefined,
  profile: ProfileDraws,
  resolution: number,
  random: Random,
): EndFloat {
  const { draws } = profile;
  if (measured === undefined || measured.length === 0) {
    return {
      measured: false,
      standard: 0,
      draws: Float64Array.from(draws, ({ tight }) =>
        Math.max(0, random() * Math.min(GREATEST_UNMEASURED, tight.backlash)),
      ),
    };
  }
  const own = measured.length < 2 ? 0 : sampleStandardDeviation([...measured]);
  const average = mean([...measured]);
  const normal = normals(random);
  const standardAt = (repeatability: number): number =>
    Math.sqrt(Math.max(own, repeatability) ** 2 / measured.length + resolution ** 2 / 12);
  return {
    measured: true,
    standard: mean(draws.map((draw) => standardAt(draw.repeatability))),
    draws: Float64Array.from(draws, (draw) =>
      Math.max(0, average + standardAt(draw.repeatability) * normal()),
    ),
  };
}

/** What is known of the end float, or null where it was not measured. */
export function endFloatEstimate(endFloat: EndFloat): Estimate | null {
  return endFloat.measured ? estimateOf(endFloat.draws) : null;
}
