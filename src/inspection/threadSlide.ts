import * as z from "zod/mini";
import { checkFormat, parseJson } from "./jsonFile.ts";
import { INSPECTION, problemOf } from "./open.ts";
import { type Outcome, succeeded } from "./problem.ts";
import { type Survey, slideSchema, surveySchema } from "./schema.ts";
import type { Units } from "./units.ts";

/** As much of an inspection as a replacement thread takes from it; lengths in the slide's unit. */
export interface ThreadSlide {
  readonly units: Units;
  readonly name?: string | undefined;
  readonly screw?:
    | {
        readonly lead?: number | undefined;
        readonly starts?: number | undefined;
        readonly hand?: "right" | "left" | undefined;
        readonly form?: string | undefined;
        readonly nominalDiameter?: number | undefined;
      }
    | undefined;
  readonly runningClearance?: number | undefined;
  readonly holdsLoad?: boolean | undefined;
  /** The screw's thread as the latest survey that measured it found it. */
  readonly measured: NonNullable<Survey["thread"]>;
}

const { units, name, screw, runningClearance, holdsLoad } = slideSchema.shape;
const { taken, thread } = surveySchema.shape;

const threadFile = z.looseObject({
  slide: z.looseObject({
    units,
    name: z.optional(name),
    screw: z.optional(z.looseObject({ ...screw.shape, lead: z.optional(screw.shape.lead) })),
    runningClearance,
    holdsLoad,
  }),
  surveys: z.optional(z.array(z.looseObject({ taken: z.optional(taken), thread }))),
});

/** Opens of an inspection file what a replacement thread needs; anything but the unit may be missing. */
export function openThreadSlide(fileText: string): Outcome<ThreadSlide> {
  const data = parseJson(fileText);
  const contents = data.ok ? checkFormat(data.value, INSPECTION) : data;
  if (!contents.ok) return contents;
  const parsed = threadFile.safeParse(contents.value, { reportInput: true });
  if (!parsed.success) return { ok: false, problem: problemOf(parsed.error.issues) };
  const { slide, surveys = [] } = parsed.data;
  const withThread = surveys
    .filter((survey) => (survey.thread ?? []).length > 0)
    .sort((a, b) => (a.taken ?? "").localeCompare(b.taken ?? ""));
  return succeeded({ ...slide, measured: withThread.at(-1)?.thread ?? [] });
}
