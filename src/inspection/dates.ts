const MILLISECONDS_PER_DAY = 86_400_000;

/** The date of a survey without one: the command reads no clock, and no result depends on it. */
export const UNDATED = "1970-01-01";

/**
 * Days from 1970-01-01 to a date of an inspection, with a fraction if it has a time. A time without a zone counts as UTC,
 * so that a file means the same everywhere.
 */
export function dayNumber(date: string): number {
  const hasTime = date.includes("T");
  const hasZone = /(Z|[+-]\d{2}:?\d{2})$/.test(date);
  return Date.parse(hasTime && !hasZone ? `${date}Z` : date) / MILLISECONDS_PER_DAY;
}

/** The date that many days after 1970-01-01, without its time: `2026-03-14`. */
export function dateOfDay(day: number): string {
  return new Date(Math.floor(day) * MILLISECONDS_PER_DAY).toISOString().slice(0, 10);
}
