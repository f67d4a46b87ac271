const DAY = new Intl.DateTimeFormat(undefined, { dateStyle: "medium" });
const MOMENT = new Intl.DateTimeFormat(undefined, { dateStyle: "medium", timeStyle: "short" });

/** A date and time in the user's language; a text that is no ISO 8601 time stays as it is. */
export function momentOf(time: string): string {
  const at = new Date(time);
  return Number.isNaN(at.getTime()) ? time : MOMENT.format(at);
}

/** The day of an ISO 8601 date, with or without a time, in the user's language. */
export function dayOf(date: string): string {
  return DAY.format(new Date(`${date.slice(0, 10)}T12:00`));
}

/** The local time to the second with its offset, ISO 8601: `2026-03-14T09:30:12+01:00`. */
export function timeNow(): string {
  const now = new Date();
  const ahead = -now.getTimezoneOffset();
  const there = new Date(now.getTime() + ahead * 60_000).toISOString().slice(0, 19);
  const part = (value: number): string => String(Math.trunc(value)).padStart(2, "0");
  return `${there}${ahead < 0 ? "-" : "+"}${part(Math.abs(ahead) / 60)}:${part(Math.abs(ahead) % 60)}`;
}

/** The local date, ISO 8601. */
export function today(): string {
  return timeNow().slice(0, 10);
}
