import { settingsOf } from "../../../analysis/decide/settings.ts";
import type { WhatIfSettings } from "../../../analysis/decide/whatIf.ts";
import { lengthsIn } from "../../../inspection/lengths.ts";
import { slideInMillimetres } from "../../../inspection/metric.ts";
import type { Inspection } from "../../../inspection/schema.ts";
import { type EditorState, NO_PENDING_INPUT } from "../../../records/editorState.ts";
import { enterField } from "../../editing/fieldValues.ts";
import type { ChangeablePath } from "./sliderRanges.ts";

/** What was typed to see what it would lead to, by its place in the slide. */
export type Tried = ReadonlyMap<ChangeablePath, string>;

/** The slide with what was typed, as far as it fits, read and refused as everywhere else. Readings stay out of it. */
export function trialOf(inspection: Inspection, tried: Tried): EditorState {
  let state: EditorState = { inspection: { ...inspection, surveys: [] }, draft: NO_PENDING_INPUT };
  for (const [path, text] of tried) state = enterField(state, { survey: null, path }, text);
  return state;
}

/** The settings that may be tried, of a slide. */
export function changeableOf({ slide }: Inspection): WhatIfSettings {
  return settingsOf(slideInMillimetres(slide), lengthsIn(slide.units)).settings;
}
