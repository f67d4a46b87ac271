import { normals, type Random, seededRandom } from "../../src/analysis/statistics/random.ts";
import { dateOfDay, dayNumber } from "../../src/inspection/dates.ts";
import type { Inspection } from "../../src/inspection/schema.ts";
import { evenly, type State, surveyOf } from "./simulatedPair.ts";
import { simulateSlide } from "./simulatedSlide.ts";
import { between } from "./wear.ts";

export interface SimulatedHistory {
  readonly inspection: Inspection;
  readonly course: string;
  /** The true uniform part at a time, in hours of use, without what comes and goes from survey to survey. */
  readonly uniform: (hours: number) => number;
  readonly uneven: number;
  readonly limit: number;
  readonly firstHours: number;
  readonly lastHours: number;
}

/** What has grown by a share of the time watched, as a share of the whole; powers are no course that is weighed. */
const COURSES: Readonly<Record<string, (random: Random) => (time: number) => number>> = {
  constant: () => () => 0,
  steady: () => (time) => time,
  settling: (random) => exponential(between(random, 0.08, 0.6)),
  power: (random) => {
    const power = between(random, 0.3, 0.7);
    return (time) => time ** power;
  },
  "settling, then steady": (random) => {
    const fast = exponential(between(random, 0.05, 0.3));
    const share = between(random, 0.2, 0.8);
    return (time) => share * time + (1 - share) * fast(time);
  },
};

function exponential(within: number): (time: number) => number {
  return (time) => (1 - Math.exp(-time / within)) / (1 - Math.exp(-1 / within));
}

/** A slide surveyed three to eight times since a repair, with a limit that most reach before long. */
export function simulateHistory(seed: number): SimulatedHistory {
  const slide = simulateSlide(seed);
  const random = seededRandom(seed ^ 0xa6e5);
  const normal = normals(random);
  const names = Object.keys(COURSES);
  const course = names[Math.floor(random() * names.length)];
  const grown = COURSES[course](random);
  const { uneven: wornBefore, backlash, uniform: found, endFloat } = slide.truth;
  const repaired: State = evenly({ uniform: found, uneven: wornBefore, backlash, endFloat }, 0.06 - found);
  const growth = course === "constant" ? 0 : 0.01 * 12 ** random();
  const comesAndGoes = between(random, 0, 0.004);
  const count = 3 + Math.floor(random() * 6);
  const [firstHours, watched] = [between(random, 0, 20), between(random, 50, 1500)];
  const times = Array.from({ length: count }, (_, i) =>
    i === 0 || i === count - 1 ? i / (count - 1) : ((i + between(random, -0.4, 0.4)) / (count - 1)) ** 1.5,
  );
  const rise = (time: number): number => growth * grown(time);
  const limit =
    course === "constant"
      ? (repaired.uniform + wornBefore) * between(random, 1.02, 1.6)
      : repaired.uniform + wornBefore + rise(between(random, 0.8, 5));
  const surveys = times.map((time, i) => {
    const state = evenly(repaired, rise(time) + comesAndGoes * normal());
    const hoursOfUse = firstHours + time * watched;
    const taken = dateOfDay(dayNumber("2026-01-05") + hoursOfUse / 4);
    return {
      ...surveyOf(`survey ${i + 1}`, i === 0 ? "after-repair" : "running-in", slide, state, random),
      hoursOfUse,
      taken,
    };
  });
  return {
    inspection: {
      ...slide.inspection,
      slide: { ...slide.inspection.slide, backlashLimit: limit },
      surveys,
    },
    course,
    uniform: (hours) => repaired.uniform + rise((hours - firstHours) / watched),
    uneven: wornBefore,
    limit,
    firstHours,
    lastHours: firstHours + watched,
  };
}
