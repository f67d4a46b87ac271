import * as z from "zod/mini";

/** The result as the published interface words it: every key required, no other key, nothing infinite. */
const estimate = z.strictObject({ value: z.number(), low: z.number(), high: z.number() });
const chance = z.number().check(z.minimum(0), z.maximum(1));
const spot = z.strictObject({ position: z.number(), backlash: z.number() });
const left = z.strictObject({ worst: estimate, position: z.number() });
const texts = z.array(z.string().check(z.minLength(1)));

/** A quantity of ISO 230-2, null where it takes more runs. */
const ofRuns = z.nullable(z.number());
const oneWay = z.strictObject({
  deviation: z.number(),
  standardDeviation: ofRuns,
  repeatability: ofRuns,
});
const eachWay = <Value extends z.core.$ZodType>(value: Value) =>
  z.strictObject({ advancing: value, retracting: value, bidirectional: value });
const unevenness = z.strictObject({ range: z.number(), byChance: z.number() });

const positioning = z.strictObject({
  runs: z.number().check(z.int(), z.minimum(1)),
  correctedTo20: z.boolean(),
  targets: z.array(
    z.strictObject({
      target: z.number(),
      advancing: oneWay,
      retracting: oneWay,
      reversal: z.number(),
      repeatability: ofRuns,
    }),
  ),
  reversal: z.number(),
  meanReversal: z.number(),
  repeatability: eachWay(ofRuns),
  meanDeviationRange: z.number(),
  systematicDeviation: eachWay(z.number()),
  accuracy: eachWay(ofRuns),
  flanks: z.nullable(
    z.strictObject({
      advancing: unevenness,
      retracting: unevenness,
      worn: z.enum(["advancing", "retracting", "both", "not proven"]),
    }),
  ),
});

export const resultSchema = z.strictObject({
  file: z.string(),
  survey: z.string(),
  units: z.enum(["mm", "in"]),
  verdict: z.enum([
    "leave-alone",
    "correct-end-float",
    "adjust-nut",
    "replace-nuts",
    "remake-screw",
    "measure-more",
    "no-verdict",
  ]),
  chances: z.nullable(
    z.strictObject({
      "leave-alone": chance,
      "correct-end-float": chance,
      "adjust-nut": chance,
      "replace-nuts": chance,
      "remake-screw": chance,
    }),
  ),
  conformance: z.enum(["proven", "disproven", "not proven"]),
  summary: z.string().check(z.minLength(1)),
  cautions: texts,
  assumed: texts,
  alternatives: texts,
  uniform: estimate,
  takeUp: estimate,
  uneven: estimate,
  greatest: estimate,
  unevenChance: chance,
  endFloat: z.nullable(estimate),
  tightSpot: spot,
  loosestSpot: spot,
  afterAdjusting: left,
  afterNewNuts: left,
  wornZones: z.array(
    z.strictObject({
      from: z.number(),
      to: z.number(),
      atLeast: z.number(),
      deepest: estimate,
      thicknessLeft: z.nullable(estimate),
    }),
  ),
  repeatability: z.number(),
  uncertainty: z.strictObject({
    lines: z.array(z.strictObject({ source: z.string(), standard: z.number() })),
    expanded: z.number(),
  }),
  profile: z.array(
    z.strictObject({ position: z.number(), backlash: z.number(), low: z.number(), high: z.number() }),
  ),
  nextReadings: z.array(
    z.union([
      z.strictObject({ position: z.number(), why: z.string() }),
      z.strictObject({ endFloat: z.literal(true), why: z.string() }),
    ]),
  ),
  canBeSettled: z.boolean(),
  checks: z.array(
    z.strictObject({
      check: z.string(),
      severity: z.enum(["note", "warning", "stop"]),
      message: z.string(),
      readings: z.array(z.number().check(z.int(), z.minimum(0))),
    }),
  ),
  positioning: z.nullable(positioning),
});
