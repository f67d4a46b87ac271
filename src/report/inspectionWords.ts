import { UNDATED } from "../inspection/dates.ts";
import type { EventKind, Stage } from "../inspection/schema.ts";

/** When in the life of a machine a survey was made. */
export const STAGE_WORDS: Readonly<Record<Stage, string>> = {
  "before-repair": "before repair",
  "after-adjusting": "after adjusting",
  "after-repair": "after repair",
  "running-in": "running in",
  routine: "routine",
};

/** What may have happened to a slide, in words. */
export const EVENT_KINDS: readonly (readonly [EventKind, string])[] = [
  ["adjusted", "Adjusted"],
  ["parts-replaced", "Parts replaced"],
  ["other", "Other"],
];

/** The kind of an event in words. */
export function kindWords(kind: EventKind): string {
  return EVENT_KINDS.find(([value]) => value === kind)?.[1] ?? kind;
}

const NO_DATE = "no date given";

const DAY = new Intl.DateTimeFormat("en-GB", {
  day: "numeric",
  month: "long",
  year: "numeric",
  timeZone: "UTC",
});

/** The day of an ISO 8601 date, the same in every time zone: `14 March 2026`; `no date given` of a log without dates. */
export function dateWords(date: string): string {
  return date === UNDATED ? NO_DATE : DAY.format(new Date(date.slice(0, 10)));
}

/** The day as it sorts: `2026-03-14`; `no date given` of a log without dates. */
export function dayWritten(date: string): string {
  return date === UNDATED ? NO_DATE : date.slice(0, 10);
}

/** The time of day of a reading where it is ISO 8601: `09:30`; anything else as it was written. */
export function timeWords(time: string): string {
  return /^\d{4}-\d{2}-\d{2}T(\d{2}:\d{2})/.exec(time)?.[1] ?? time;
}
