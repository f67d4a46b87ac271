import { mean, sampleStandardDeviation } from "simple-statistics";
import { isPlainObject } from "../../inspection/plainData.ts";
import type { Survey } from "../../inspection/schema.ts";
import { alignmentCosine } from "../correct/corrections.ts";
import { type Target, type TargetReading, targetsOf } from "../correct/targets.ts";
import type { Random } from "../statistics/random.ts";
import { type DirectionCurve, type Flanks, flanksOf } from "./flanks.ts";

/** The readings at one target from one side, in millimetres. */
export interface OneWay {
  /** x̄ᵢ: mean of reading − target. */
  readonly deviation: number;
  /** sᵢ, the sample standard deviation; null for a single reading. */
  readonly standardDeviation: number | null;
  /** Rᵢ = 4 sᵢ. */
  readonly repeatability: number | null;
}

export interface PositioningTarget {
  readonly target: number;
  readonly advancing: OneWay;
  readonly retracting: OneWay;
  /** Bᵢ = x̄ᵢ↑ − x̄ᵢ↓, with its sign. */
  readonly reversal: number;
  /** Rᵢ = max(2sᵢ↑ + 2sᵢ↓ + |Bᵢ|, Rᵢ↑, Rᵢ↓). */
  readonly repeatability: number | null;
}

/** A quantity of each direction alone (↑, ↓) and of both together. */
export interface EachWay<Value> {
  readonly advancing: Value;
  readonly retracting: Value;
  readonly bidirectional: Value;
}

/**
 * The quantities of ISO 230-2 for an axis, in millimetres. Those that need standard deviations are null if a target was
 * read only once from a side.
 */
export interface Positioning {
  /** Least number of readings from one side at a target. */
  readonly runs: number;
  readonly correctedTo20: boolean;
  /** The targets that were read from both sides, in order of position. */
  readonly targets: readonly PositioningTarget[];
  /** B = max |Bᵢ|. */
  readonly reversal: number;
  /** B̄, the mean of Bᵢ, with its sign. */
  readonly meanReversal: number;
  /** R↑, R↓ and R: the greatest of the targets'. */
  readonly repeatability: EachWay<number | null>;
  /** M: range of (x̄ᵢ↑ + x̄ᵢ↓) / 2. */
  readonly meanDeviationRange: number;
  /** E↑, E↓ and E: range of x̄ᵢ. */
  readonly systematicDeviation: EachWay<number>;
  /** A↑, A↓ and A: from the least x̄ᵢ − 2sᵢ to the greatest x̄ᵢ + 2sᵢ. */
  readonly accuracy: EachWay<number | null>;
  /** Null if there are too few targets or repeats. */
  readonly flanks: Flanks | null;
}

/** Readings from each side at every target that ISO 230-2 requires. */
export const STANDARD_RUNS = 5;

/** Reference temperature of ISO 1, in °C. */
const REFERENCE_TEMPERATURE = 20;

/**
 * The quantities of ISO 230-2 from readings of true positions at targets, and the flank they show as worn. Every reading
 * that is not struck counts, with or without its partner, at targets that were read from both sides.
 *
 * @param survey a survey with lengths in millimetres
 * @param resolution graduation of the readings, in millimetres
 * @returns undefined if no target was read from both sides, as in surveys by other methods
 */
export function positioningOf(survey: Survey, resolution: number, random: Random): Positioning | undefined {
  const targets = targetsOf(survey.readings).filter(
    ({ advancing, retracting }) => advancing.length > 0 && retracting.length > 0,
  );
  if (targets.length === 0) return undefined;
  const correction = temperatureFactor(survey.conditions);
  const factor = alignmentCosine(survey) * (correction ?? 1);
  const advancing = curveOf(targets, "advancing", factor);
  const retracting = curveOf(targets, "retracting", factor);
  const found = targets.map(({ position }, i) =>
    targetOf(position, advancing.deviations[i], retracting.deviations[i]),
  );
  return {
    runs: Math.min(...[...advancing.deviations, ...retracting.deviations].map((runs) => runs.length)),
    correctedTo20: correction !== null,
    targets: found,
    ...axisQuantities(found),
    flanks: flanksOf(advancing, retracting, resolution, random),
  };
}

/**
 * The factor that corrects positions to 20 °C, from `temperature` in °C and `expansion` in µm/(m·K), by which the screw
 * expands more than the scale that positions were read on. Null if either is not stated.
 */
function temperatureFactor(conditions: unknown): number | null {
  if (!isPlainObject(conditions)) return null;
  const { temperature, expansion } = conditions;
  if (typeof temperature !== "number" || typeof expansion !== "number") return null;
  return 1 - expansion * 1e-6 * (temperature - REFERENCE_TEMPERATURE);
}

function curveOf(
  targets: readonly Target[],
  direction: "advancing" | "retracting",
  factor: number,
): DirectionCurve {
  const deviation = ({ item }: TargetReading): number => item.reading * factor - item.target;
  return {
    positions: targets.map(({ position }) => position),
    deviations: targets.map((target) => target[direction].map(deviation)),
  };
}

function targetOf(target: number, ahead: readonly number[], back: readonly number[]): PositioningTarget {
  const advancing = oneWay(ahead);
  const retracting = oneWay(back);
  const reversal = advancing.deviation - retracting.deviation;
  const repeatability =
    advancing.standardDeviation === null || retracting.standardDeviation === null
      ? null
      : Math.max(
          2 * advancing.standardDeviation + 2 * retracting.standardDeviation + Math.abs(reversal),
          4 * advancing.standardDeviation,
          4 * retracting.standardDeviation,
        );
  return { target, advancing, retracting, reversal, repeatability };
}

function oneWay(deviations: readonly number[]): OneWay {
  const standardDeviation = deviations.length < 2 ? null : sampleStandardDeviation([...deviations]);
  return {
    deviation: mean([...deviations]),
    standardDeviation,
    repeatability: standardDeviation === null ? null : 4 * standardDeviation,
  };
}

function axisQuantities(
  targets: readonly PositioningTarget[],
): Omit<Positioning, "runs" | "correctedTo20" | "targets" | "flanks"> {
  const advancing = targets.map((target) => target.advancing);
  const retracting = targets.map((target) => target.retracting);
  const eachWay = <Value>(quantity: (ways: readonly OneWay[]) => Value): EachWay<Value> => ({
    advancing: quantity(advancing),
    retracting: quantity(retracting),
    bidirectional: quantity([...advancing, ...retracting]),
  });
  return {
    reversal: Math.max(...targets.map(({ reversal }) => Math.abs(reversal))),
    meanReversal: mean(targets.map(({ reversal }) => reversal)),
    repeatability: { ...eachWay(leastRepeatable), bidirectional: leastRepeatable(targets) },
    meanDeviationRange: range(
      targets.map((target) => (target.advancing.deviation + target.retracting.deviation) / 2),
    ),
    systematicDeviation: eachWay((ways) => range(ways.map(({ deviation }) => deviation))),
    accuracy: eachWay(accuracyOf),
  };
}

function leastRepeatable(of: readonly { readonly repeatability: number | null }[]): number | null {
  const known = of.flatMap(({ repeatability }) => repeatability ?? []);
  return known.length < of.length ? null : Math.max(...known);
}

function accuracyOf(ways: readonly OneWay[]): number | null {
  const ends = ways.flatMap(({ deviation, standardDeviation }) =>
    standardDeviation === null ? [] : [deviation - 2 * standardDeviation, deviation + 2 * standardDeviation],
  );
  return ends.length < 2 * ways.length ? null : range(ends);
}

function range(values: readonly number[]): number {
  return Math.max(...values) - Math.min(...values);
}
