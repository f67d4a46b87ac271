const DAY = new Intl.DateTimeFormat(undefined, { dateStyle: "medium" });

/** The day of an ISO 8601 date, which may have a time, as the reader writes it. */
export function dayOf(date: string): string {
  return DAY.format(new Date(`${date.slice(0, 10)}T12:00`));
}
