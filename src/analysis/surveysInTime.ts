import { dayNumber } from "../inspection/dates.ts";
import type { Survey } from "../inspection/schema.ts";

/** Surveys from the first taken to the last; those of one time stay in their order. */
export function surveysInTime(surveys: readonly Survey[]): readonly Survey[] {
  return surveys.toSorted((one, other) => dayNumber(one.taken) - dayNumber(other.taken));
}

/** Whether a survey holds readings that count: one that was only prepared is no survey yet. */
export function isRead({ readings }: Survey): boolean {
  return readings.some(({ excluded }) => excluded === undefined);
}
