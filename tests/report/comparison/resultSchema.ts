import * as z from "zod/mini";

/** The result of a comparison as the published interface words it: every key required, no other key. */
const estimate = z.strictObject({ value: z.number(), low: z.number(), high: z.number() });
const chance = z.number().check(z.minimum(0), z.maximum(1));
const texts = z.array(z.string().check(z.minLength(1)));
const stages = ["before-repair", "after-adjusting", "after-repair", "running-in", "routine"];
const time = z.union([z.number(), z.string().check(z.regex(/^\d{4}-\d{2}-\d{2}$/))]);
const conformance = z.enum(["proven", "disproven", "not proven"]);

const survey = z.strictObject({
  survey: z.string(),
  taken: z.string(),
  stage: z.enum(stages),
  verdict: z.string(),
  uniform: estimate,
  uneven: estimate,
  greatest: estimate,
  endFloat: z.nullable(estimate),
  profile: z.array(
    z.strictObject({ position: z.number(), backlash: z.number(), low: z.number(), high: z.number() }),
  ),
});

const runningIn = z.strictObject({
  by: z.enum(["date", "hours"]),
  summary: z.string().check(z.minLength(1)),
  surveys: z.array(z.strictObject({ survey: z.string(), taken: z.string(), at: time, uniform: estimate })),
  chances: z.strictObject({
    constant: chance,
    steady: chance,
    settling: chance,
    slowing: chance,
    "settling-then-steady": chance,
  }),
  likeliest: z.enum(["constant", "steady", "settling", "slowing", "settling-then-steady"]),
  growth: estimate,
  scatter: z.number(),
  trend: z.array(z.strictObject({ at: time, uniform: z.number(), low: z.number(), high: z.number() })),
  limit: z.number(),
  uneven: estimate,
  limitReached: z.strictObject({
    value: z.nullable(time),
    low: z.nullable(time),
    high: z.nullable(time),
    chanceAlready: chance,
    chanceByHorizon: chance,
    horizon: time,
  }),
  lookAgain: z.strictObject({ at: time, why: z.enum(["now", "limit", "watched"]) }),
});

export const comparisonSchema = z.strictObject({
  file: z.string(),
  slide: z.strictObject({ id: z.string(), name: z.string() }),
  units: z.enum(["mm", "in"]),
  from: survey,
  to: survey,
  done: z.nullable(z.enum(["adjusted", "parts-replaced", "repaired"])),
  summary: z.string().check(z.minLength(1)),
  change: z.strictObject({
    uniform: estimate,
    uneven: estimate,
    greatest: estimate,
    endFloat: z.nullable(estimate),
    uniformLessEndFloat: z.nullable(estimate),
  }),
  difference: z.array(
    z.strictObject({ position: z.number(), change: z.number(), low: z.number(), high: z.number() }),
  ),
  sameEverywhere: z.boolean(),
  acceptance: z.strictObject({
    conformance,
    withheld: z.nullable(z.enum(["coverage", "checks", "spring-loaded"])),
    limit: z.number(),
    greatest: estimate,
    chance,
  }),
  notes: texts,
  cautions: texts,
  assumed: texts,
  runningIn: z.nullable(runningIn),
});
