import { readFileSync } from "node:fs";
import * as z from "zod/mini";
import type { Observation } from "../../../src/analysis/runningIn/leastSquares.ts";

const set = z.object({
  time: z.array(z.number()),
  value: z.array(z.number()),
  deviation: z.array(z.number()),
  steady: z.object({
    scatter: z.number(),
    amount: z.number(),
    amountDeviation: z.number(),
    level: z.number(),
    logEvidence: z.number(),
  }),
  chances: z.record(z.string(), z.number()),
});

const file = new URL("../../reference/runningIn.json", import.meta.url);
const written = z.record(z.string(), set).parse(JSON.parse(readFileSync(file, "utf8")));

/** What R makes of three invented histories. */
export const SETS = Object.fromEntries(
  Object.entries(written).map(([name, { time, value, deviation, ...found }]) => [
    name,
    {
      ...found,
      observations: time.map(
        (each, i): Observation => ({ time: each, value: value[i] ?? 0, deviation: deviation[i] ?? 0 }),
      ),
    },
  ]),
);
