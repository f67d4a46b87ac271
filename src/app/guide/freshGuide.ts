import type { Slide, Survey } from "../../inspection/schema.ts";
import type { Guide } from "../../records/record.ts";
import { plannedStations } from "./plannedStations.ts";

/** Where the entry station by station of a survey begins; one that has readings goes on reading. */
export function freshGuide(slide: Slide, survey: Survey): Guide {
  return {
    survey: survey.id,
    isOpen: true,
    at: survey.readings.length === 0 ? "way" : "readings",
    stations: plannedStations(slide),
    typing: {},
  };
}
