import { settingsOf } from "../../../analysis/settings.ts";
import type { Changeable } from "../../../analysis/whatIf.ts";
import { lengthsIn } from "../../../inspection/lengths.ts";
import { slideInMillimetres } from "../../../inspection/metric.ts";
import type { Inspection } from "../../../inspection/schema.ts";
import { EMPTY_DRAFT, type Work } from "../../../records/record.ts";
import { enterField } from "../../editing/fields.ts";
import type { ChangeablePath } from "./spans.ts";

/** What was typed to see what it would lead to, by its place in the slide. */
export type Tried = ReadonlyMap<ChangeablePath, string>;

/** The slide with what was typed, as far as it fits, read and refused as everywhere else. Readings stay out of it. */
export function trialOf(inspection: Inspection, tried: Tried): Work {
  let work: Work = { inspection: { ...inspection, surveys: [] }, draft: EMPTY_DRAFT };
  for (const [path, text] of tried) work = enterField(work, { survey: null, path }, text);
  return work;
}

/** The settings that may be tried, of a slide. */
export function changeableOf({ slide }: Inspection): Changeable {
  return settingsOf(slideInMillimetres(slide), lengthsIn(slide.units)).settings;
}
