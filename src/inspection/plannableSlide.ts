import * as z from "zod/mini";
import { problemOf } from "./open.ts";
import { failed, type Outcome, succeeded } from "./problem.ts";
import { type Slide, slideSchema } from "./schema.ts";

/** As much of a slide as a measuring plan needs, and what a log sheet shows of it besides. */
export type PlannableSlide = Pick<Slide, "units" | "travel" | "screw" | "nut"> &
  Partial<Pick<Slide, "name" | "machine" | "holdsLoad">>;

const { units, travel, screw, nut, name, machine, holdsLoad } = slideSchema.shape;

const plannable = z.looseObject({
  slide: z.looseObject({ units, travel, screw, nut, name: z.optional(name), machine, holdsLoad }),
});

/** Checks that data are a slide that can be planned for; any other part of a slide may be missing. */
export function readPlannableSlide(slide: unknown): Outcome<PlannableSlide> {
  const parsed = plannable.safeParse({ slide }, { reportInput: true });
  if (parsed.success) return succeeded(parsed.data.slide as PlannableSlide);
  const { where, what } = problemOf(parsed.error.issues);
  return failed(where, what, "Correct it in the file, or in the options given with it.");
}
