import * as z from "zod/mini";

const cells = z.record(z.string(), z.string());
const plain = z.record(z.string(), z.unknown());
const steps = z.array(z.looseObject({ of: z.enum(["rows", "field", "stations", "events"]) }));

/** As much of what was typed as the page must be able to rely on; more keys are left as they are. */
export const pendingInputSchema = z.looseObject({
  fields: z.array(z.looseObject({ survey: z.nullable(z.string()), path: z.string(), text: z.string() })),
  rows: z.array(z.looseObject({ survey: z.string(), row: z.number(), cells, marks: plain })),
  waiting: z.optional(z.looseObject({ readings: z.array(plain), slide: plain, survey: plain })),
  guides: z.optional(
    z.array(z.looseObject({ survey: z.string(), stations: z.array(z.number()), typing: cells })),
  ),
  steps: z.optional(z.looseObject({ done: steps, undone: steps })),
});
