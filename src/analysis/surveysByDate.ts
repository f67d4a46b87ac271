import { dayNumber } from "../inspection/dates.ts";
import type { Survey } from "../inspection/schema.ts";

/** Surveys from the first taken to the last; surveys of the same time stay in file order. */
export function surveysByDate(surveys: readonly Survey[]): readonly Survey[] {
  return surveys.toSorted((one, other) => dayNumber(one.taken) - dayNumber(other.taken));
}

/** Whether a survey has readings that count; one that was only prepared has none yet. */
export function hasReadings({ readings }: Survey): boolean {
  return readings.some(({ excluded }) => excluded === undefined);
}
