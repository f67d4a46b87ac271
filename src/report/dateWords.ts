import { MONTHS } from "../inspection/dates.ts";

/** The day of an ISO 8601 date, the same wherever it is read: `14 March 2026`. */
export function dateWords(date: string): string {
  const [year = "", month = "", day = ""] = date.slice(0, 10).split("-");
  return `${Number(day)} ${MONTHS[Number(month) - 1] ?? month} ${year}`;
}

/** The time of day of a reading where it is ISO 8601: `09:30`; anything else stays as it was written. */
export function timeWords(time: string): string {
  return /^\d{4}-\d{2}-\d{2}T(\d{2}:\d{2})/.exec(time)?.[1] ?? time;
}
