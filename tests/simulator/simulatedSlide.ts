import type { Action } from "../../src/analysis/assessment.ts";
import { decide, type Extremes } from "../../src/analysis/decide/decision.ts";
import { settingsOf } from "../../src/analysis/decide/settings.ts";
import { drawIndex, type Random, seededRandom } from "../../src/analysis/statistics/random.ts";
import { lengthsIn } from "../../src/inspection/lengths.ts";
import { slideInMillimetres } from "../../src/inspection/metric.ts";
import type { Inspection } from "../../src/inspection/schema.ts";
import { type Fault, NO_FAULT } from "./faults.ts";
import { leastEngaged } from "./leastEngaged.ts";
import { takeSurvey } from "./takeSurvey.ts";
import { between, logBetween, SHAPES } from "./wear.ts";

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

/** Apart from the seeds of slides, so that a fault changes nothing else of a slide. */
const FAULT_SEED = 0x5eed;

/**
 * A slide, its screw's wear, and a survey of it, from the mixture on which the figures are stated.
 *
 * @param fault what is wrong with the survey, if anything
 */
export function simulateSlide(seed: number, fault: Fault = NO_FAULT): SimulatedSlide {
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
    { travel, engaged },
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
  const { survey, repeatability, stations } = takeSurvey(
    random,
    { slide, backlash: profile.at, endFloat },
    fault,
  );
  const inspection = {
    format: "tightspot-inspection" as const,
    version: 1 as const,
    slide,
    surveys: [survey],
  };
  return {
    inspection: fault.spoil?.(inspection, seededRandom(seed ^ FAULT_SEED)) ?? inspection,
    truth: {
      shape: shape.name,
      backlash: profile.at,
      uniform: profile.least,
      uneven: profile.greatest - profile.least,
      tightAt: profile.leastAt,
      verdict: decide(found, settings),
      repeatability,
      endFloat,
      stations,
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
