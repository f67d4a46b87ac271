import type { Action } from "../../src/analysis/assessment.ts";
import { decide } from "../../src/analysis/decide/decision.ts";
import { type Settings, settingsOf } from "../../src/analysis/decide/settings.ts";
import { type Random, seededRandom } from "../../src/analysis/statistics/random.ts";
import { lengthsIn } from "../../src/inspection/lengths.ts";
import { type MetricSlide, slideLengths, surveyInUnits } from "../../src/inspection/metric.ts";
import type { Kind, Screw } from "./kinds/kind.ts";
import { drawLimit, drawScrew } from "./kinds/slide.ts";
import { type Circumstances, drawCircumstances, readSurvey } from "./kinds/survey.ts";
import { type LeastEngaged, leastEngaged } from "./leastEngaged.ts";
import type { SimulatedSlide, Truth } from "./simulatedSlide.ts";
import { between, logBetween } from "./wear.ts";

/** A verdict, and what adjusting leaves of lost motion where it is greatest, mm. */
export interface Answer {
  readonly verdict: Action;
  readonly left: number;
}

/** What is true of a slide, mm: without wobble, which is in the readings alone. */
export interface KindTruth extends Truth {
  /** Greatest lost motion over the working range, end float and drive play included. */
  readonly greatest: number;
  /** What adjusting leaves, the end float put right as far as it can be. */
  readonly leftAfterAdjusting: number;
  /**
   * Every answer that is right. There is one, but where the end float is above what can be attained by no more than a
   * graduation, nothing need be credited to it, and where readings carry a wobble, it may count as lost motion.
   */
  readonly answers: readonly Answer[];
  readonly overLimit: boolean;
  readonly drivePlay: number;
  readonly wobble: number;
  /** The indicator's limit of error, ±. */
  readonly error: number;
  /** Lost motion on a grid along the travel. */
  readonly profile: readonly { readonly position: number; readonly backlash: number }[];
}

export interface SimulatedKind extends SimulatedSlide {
  readonly truth: KindTruth;
}

/** A slide whose screw has worn in the given way, and a survey of it. */
export function simulatedKind(kind: Kind, seed: number): SimulatedKind {
  const random = seededRandom(seed);
  for (let i = 0; i < 20; i++) random();
  const units = random() < 0.65 ? "mm" : "in";
  const screw = drawScrew(kind, units, random);
  const circumstances = drawCircumstances(random);
  const { endFloat, drivePlay } = circumstances;
  const flanks = kind.wear(random, screw);
  const nodes = Math.round((screw.travel + screw.engaged) / screw.grid);
  const worn = leastEngaged(flanks, screw, 0, nodes);
  // However the thread is made, the nut goes on it.
  const clearance = Math.max(logBetween(random, 0.015, 0.3), 0.005 - worn.least);
  const workingRange = random() < 0.2 ? partOf(screw, random) : { from: 0, to: screw.travel };
  const [tight, worst] = [clearance + worn.least, clearance + greatestWithin(worn, workingRange)];
  const stated = random() < 0.5 ? { runningClearance: between(random, 0.005, 0.03) } : {};
  const runningClearance = stated.runningClearance ?? 0.025;
  const found = { worst, tight, endFloat, drivePlay };
  const limit = drawLimit({ ...found, runningClearance, endFloatAttainable: 0.01 }, units, random);
  const slide: MetricSlide = {
    id: "slide",
    name: "Simulated slide",
    units: "mm",
    travel: { from: 0, to: screw.travel },
    ...(workingRange.to - workingRange.from < screw.travel ? { workingRange } : {}),
    screw: { lead: screw.lead, starts: 1 },
    nut: drawNut(screw, random),
    backlashLimit: limit,
    ...stated,
  };
  const elsewhere = clearance + endFloat + drivePlay;
  const backlash = (position: number): number => elsewhere + worn.at(position);
  const taken = readSurvey(backlash, screw, circumstances, units, random);
  const { settings } = settingsOf(slide, lengthsIn("mm"));
  const answers = answersTo(found, circumstances, taken.graduation, settings);
  return {
    inspection: {
      format: "tightspot-inspection",
      version: 1,
      slide: { ...slideLengths(slide, "mm", units), units },
      surveys: [surveyInUnits(taken.survey, "mm", units)],
    },
    truth: {
      shape: kind.name,
      backlash,
      uniform: tight + endFloat + drivePlay,
      uneven: worst - tight,
      greatest: worst + endFloat + drivePlay,
      tightAt: worn.leastAt,
      verdict: answers[0].verdict,
      leftAfterAdjusting: answers[0].left,
      answers,
      overLimit: worst + endFloat + drivePlay > limit + 1e-9,
      repeatability: taken.repeatability,
      stations: taken.stations,
      endFloat,
      drivePlay,
      wobble: circumstances.wobble,
      error: circumstances.error,
      profile: Array.from(worn.values, (value, i) => ({
        position: i * worn.step,
        backlash: elsewhere + value,
      })),
    },
  };
}

function partOf({ travel }: Screw, random: Random) {
  const length = between(random, 0.4, 0.9) * travel;
  const from = Math.round(between(random, 0, travel - length));
  return { from, to: Math.min(travel, Math.round(from + length)) };
}

function greatestWithin({ values, step, at }: LeastEngaged, { from, to }: Settings["workingRange"]): number {
  return values.reduce(
    (most, value, i) => (i * step >= from && i * step <= to ? Math.max(most, value) : most),
    Math.max(at(from), at(to)),
  );
}

function drawNut({ engaged }: Screw, random: Random): MetricSlide["nut"] {
  const adjustable = random() < 0.75;
  const sometimes = (chance: number, low: number, high: number): number | undefined => {
    const length = Math.round(100 * logBetween(random, low, high)) / 100;
    return random() < chance ? length : undefined;
  };
  return {
    engagedLength: engaged,
    adjustable,
    takeUpLeft: adjustable ? sometimes(0.3, 0.02, 0.4) : undefined,
    takeUpUsed: sometimes(0.2, 0.02, 0.2),
    clearanceNew: sometimes(0.2, 0.01, 0.05),
    wearLimit: sometimes(0.3, 0.08, 0.5),
  };
}

interface Extent {
  readonly worst: number;
  readonly tight: number;
  readonly endFloat: number;
  readonly drivePlay: number;
}

/** The answers of the rule of decision to what is true, the plain one first. */
function answersTo(
  found: Extent,
  { wobble }: Circumstances,
  graduation: number,
  settings: Settings,
): readonly Answer[] {
  const { worst, tight, endFloat } = found;
  const attainable = settings.endFloatAttainable;
  const unnamed = endFloat > attainable && endFloat <= attainable + graduation;
  const extents =
    wobble === 0
      ? [found]
      : [
          found,
          { ...found, worst: worst + wobble },
          { ...found, worst: worst + wobble, tight: tight - wobble },
        ];
  return [attainable, ...(unnamed ? [endFloat] : [])].flatMap((endFloatAttainable) =>
    extents.map((extent) => ({
      verdict: decide(extent, { ...settings, endFloatAttainable }),
      left: leftOf(extent, { ...settings, endFloatAttainable }),
    })),
  );
}

/** Adjusting takes up what the nut has left, to the running clearance at the tight spot. */
function leftOf({ worst, tight, endFloat }: Extent, settings: Settings): number {
  const { runningClearance, takeUpLeft, endFloatAttainable, adjustable } = settings;
  const takenUp = Math.max(0, tight - runningClearance);
  return (
    worst - (adjustable ? Math.min(takenUp, takeUpLeft) : takenUp) + Math.min(endFloat, endFloatAttainable)
  );
}
