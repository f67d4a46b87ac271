import type { Slide, Survey } from "../../../inspection/schema.ts";
import type { GuideState } from "../../../records/editorState.ts";
import { plannedStations } from "./plannedStations.ts";

/**
 * Where the entry station by station of a survey begins. One that has readings was planned elsewhere: it goes on where
 * one more reading tells most.
 */
export function freshGuide(slide: Slide, survey: Survey): GuideState {
  const begun = survey.readings.length > 0;
  const planned = plannedStations(slide);
  return {
    survey: survey.id,
    isOpen: true,
    at: begun ? "readings" : "way",
    stations: begun || !planned.ok ? [] : planned.value.stations,
    typing: {},
  };
}
