import { monthName, UNDATED } from "../inspection/dates.ts";

const NO_DATE = "no date given";

/** The day of an ISO 8601 date, the same wherever it is read: `14 March 2026`; of a log without dates, that. */
export function dateWords(date: string): string {
  if (date === UNDATED) return NO_DATE;
  const [year = "", month = "", day = ""] = date.slice(0, 10).split("-");
  return `${Number(day)} ${monthName(Number(month), "long")} ${year}`;
}

/** The day as it sorts: `2026-03-14`. */
export function dayWritten(date: string): string {
  return date === UNDATED ? NO_DATE : date.slice(0, 10);
}

/** The time of day of a reading where it is ISO 8601: `09:30`; anything else stays as it was written. */
export function timeWords(time: string): string {
  return /^\d{4}-\d{2}-\d{2}T(\d{2}:\d{2})/.exec(time)?.[1] ?? time;
}
