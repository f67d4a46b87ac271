import * as z from "zod/mini";
import { problemOf } from "./open.ts";
import { failed, type Outcome, succeeded } from "./problem.ts";
import { type Slide, slideSchema } from "./schema.ts";

/** The part of a slide that a measuring plan and its log sheet need. */
export type PlannableSlide = Pick<Slide, "units" | "travel" | "screw" | "nut"> &
  Partial<Pick<Slide, "name" | "machine" | "holdsLoad">>;

const { units, travel, screw, nut, name, machine, holdsLoad } = slideSchema.shape;

const plannable = z.looseObject({
  slide: z.looseObject({ units, travel, screw, nut, name: z.optional(name), machine, holdsLoad }),
});

/** Checks that data is a slide with all that a measuring plan needs. */
export function readPlannableSlide(slide: unknown): Outcome<PlannableSlide> {
  const parsed = plannable.safeParse({ slide }, { reportInput: true });
  if (parsed.success) return succeeded(parsed.data.slide as PlannableSlide);
  const { where, what } = problemOf(parsed.error.issues);
  return failed(where, what, "Correct it in the file, or in the options given with it.");
}
