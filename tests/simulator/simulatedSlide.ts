import type { Action } from "../../src/analysis/assessment.ts";
import { decide, type Extremes } from "../../src/analysis/decision.ts";
import { drawIndex, normals, type Random, seededRandom } from "../../src/analysis/random.ts";
import { settingsOf } from "../../src/analysis/settings.ts";
import { lengthsIn } from "../../src/inspection/lengths.ts";
import { slideInMillimetres } from "../../src/inspection/metric.ts";
import type { Inspection, Reading } from "../../src/inspection/schema.ts";
import { between, SHAPES } from "./wear.ts";

/** What is true of a simulated slide, which no survey knows. */
export interface Truth {
  readonly shape: string;
  readonly backlash: (position: number) => number;
  readonly uniform: number;
  readonly uneven: number;
  readonly tightAt: number;
  readonly verdict: Action;
  readonly repeatability: number;
  readonly endFloat: number;
  readonly stations: number;
}

export interface SimulatedSlide {
  readonly inspection: Inspection;
  readonly truth: Truth;
}

/** Faults that can be laid over a clean survey, one at a time. */
export type Fault = "none" | "wobble" | "drift" | "slip";

const RESOLUTIONS = [0.001, 0.002, 0.005, 0.01, 0.0127, 0.02, 0.0254];
const STEPS = 1500;

/** A slide, its screw's wear, and a survey of it, from the mixture on which the figures are stated. */
export function simulateSlide(seed: number, fault: Fault = "none"): SimulatedSlide {
  const random = seededRandom(seed);
  for (let i = 0; i < 20; i++) random();
  const travel = between(random, 60, 600);
  const lead = between(random, 2, 6.35);
  const engaged = Math.min(between(random, 15, 70), 0.45 * travel);
  const shape =
    SHAPES[
      drawIndex(
        SHAPES.map((each) => each.weight),
        random,
      )
    ];
  const depth = logBetween(random, 0.02, 0.5);
  const wear = shape.make(random);
  const firstFlank = between(random, 0.3, 0.7);
  const clearance = logBetween(random, 0.015, 0.35);
  const endFloat = random() < 0.5 ? 0 : between(random, 0, 0.12);
  const profile = leastEngaged(
    [firstFlank, 1 - firstFlank].map((share) => (at: number) => share * depth * wear(at / travel)),
    travel,
    engaged,
    clearance + endFloat,
  );
  const runningClearance = between(random, 0.005, 0.025);
  const left = profile.greatest - profile.least + runningClearance + Math.min(endFloat, 0.01);
  const limit = limitNear(left, random);
  const slide = {
    id: "slide",
    name: "Simulated slide",
    units: "mm" as const,
    travel: { from: 0, to: travel },
    screw: { lead, starts: 1 },
    nut: { engagedLength: engaged, adjustable: random() < 0.7 },
    backlashLimit: limit,
    runningClearance,
  };
  const { settings } = settingsOf(slideInMillimetres(slide), lengthsIn("mm"));
  const found: Extremes = {
    worst: profile.greatest - endFloat,
    tight: profile.least - endFloat,
    endFloat,
    drivePlay: 0,
  };
  const survey = surveyed(random, profile.at, travel, lead, endFloat, fault);
  return {
    inspection: {
      format: "tightspot-inspection",
      version: 1,
      slide,
      surveys: [
        {
          id: "survey",
          taken: "2026-03-14",
          stage: "before-repair",
          method: survey.method,
          indicator: { resolution: survey.resolution },
          endFloat: survey.endFloat,
          readings: survey.readings,
        },
      ],
    },
    truth: {
      shape: shape.name,
      backlash: profile.at,
      uniform: profile.least,
      uneven: profile.greatest - profile.least,
      tightAt: profile.leastAt,
      verdict: decide(found, settings),
      repeatability: survey.repeatability,
      endFloat,
      stations: survey.stations,
    },
  };
}

/** In six of ten slides a limit near what adjusting would leave, where the choice is hardest. */
function limitNear(left: number, random: Random): number {
  if (random() < 0.6) {
    for (let attempt = 0; attempt < 50; attempt++) {
      const limit = left * Math.exp(between(random, -0.6, 0.6));
      if (limit >= 0.05 && limit <= 0.4) return limit;
    }
  }
  return logBetween(random, 0.05, 0.4);
}

function logBetween(random: Random, low: number, high: number): number {
  return low * (high / low) ** random();
}

/** Lost motion along the travel: a stiff nut is stopped by the least worn thread it engages, on each flank. */
function leastEngaged(
  flanks: readonly ((at: number) => number)[],
  travel: number,
  engaged: number,
  elsewhere: number,
) {
  const thread = (travel + engaged) / STEPS;
  const worn = flanks.map((flank) =>
    Float64Array.from({ length: STEPS + 1 }, (_, i) => flank(i * thread - engaged / 2)),
  );
  const window = Math.round(engaged / thread);
  const values = Float64Array.from({ length: STEPS + 1 - window }, (_, i) =>
    worn.reduce((sum, flank) => sum + Math.min(...flank.subarray(i, i + window + 1)), elsewhere),
  );
  const step = travel / (values.length - 1);
  const least = Math.min(...values);
  return {
    least,
    greatest: Math.max(...values),
    leastAt: values.indexOf(least) * step,
    at: (position: number): number => {
      const place = Math.min(values.length - 1, Math.max(0, position / step));
      const before = Math.floor(place);
      const after = Math.min(values.length - 1, before + 1);
      return values[before] + (place - before) * (values[after] - values[before]);
    },
  };
}

/** Reads a slide all along its travel, with a gauge, hands and habits of chance. */
export function surveyed(
  random: Random,
  backlash: (at: number) => number,
  travel: number,
  lead: number,
  endFloat: number,
  fault: Fault,
) {
  const normal = normals(random);
  const resolution = RESOLUTIONS[Math.floor(random() * RESOLUTIONS.length)];
  const repeatability = between(random, 0.15, 0.6) * Math.max(resolution, 0.008);
  const count = 8 + Math.floor(random() * 18);
  const jitter = random() < 0.5 ? 0 : 0.6;
  const repeats = 1 + Math.floor(random() * 5);
  const asPairs = random() < 0.3;
  const places = Array.from({ length: count }, (_, i) => {
    const share = (i + (i > 0 && i < count - 1 ? jitter * (random() - 0.5) : 0)) / (count - 1);
    return Math.round(share * travel * 1000) / 1000;
  });
  const round = (value: number): number => Math.round(value / resolution) * resolution;
  const total = count * repeats;
  const creep = between(random, 0.01, 0.04) * (random() < 0.5 ? -1 : 1);
  const wobble = between(random, 0.002, 0.012);
  const phase = between(random, 0, 2 * Math.PI);
  const origin = between(random, 0.2, 0.8);
  const slipAt = Math.floor(random() * total);
  const slipFactor = random() < 0.5 ? 10 : 0.1;
  const readings: Reading[] = [];
  for (let repeat = 0; repeat < repeats; repeat++) {
    const order = repeat % 2 === 0 ? places : [...places].reverse();
    for (const position of order) {
      let value = backlash(position);
      if (fault === "wobble") value += wobble * Math.sin((2 * Math.PI * position) / lead + phase);
      if (fault === "drift") value += (creep * readings.length) / Math.max(1, total - 1);
      const factor = fault === "slip" && readings.length === slipAt ? slipFactor : 1;
      if (asPairs) {
        const advancing = round(origin + (repeatability / Math.SQRT2) * normal());
        const retracting = round(origin - value + (repeatability / Math.SQRT2) * normal());
        readings.push({ position, advancing, retracting: advancing - factor * (advancing - retracting) });
      } else {
        readings.push({ position, backlash: round(value + repeatability * normal()) * factor });
      }
    }
  }
  return {
    method: asPairs ? ("indicator-pair" as const) : ("push-pull" as const),
    resolution,
    repeatability,
    stations: count,
    readings,
    endFloat: [0, 1].map(() => Math.max(0, round(endFloat + repeatability * normal()))),
  };
}
