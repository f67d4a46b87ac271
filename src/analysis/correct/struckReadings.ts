import type { Survey } from "../../inspection/schema.ts";
import { correct, type LostMotion } from "./corrections.ts";

/**
 * What struck readings come to, corrected like the others: they count for nothing, and are shown for what they are.
 * A pair is struck where either of its two readings is.
 *
 * @param survey a survey with lengths in millimetres
 * @param lead travel for one turn of the screw, in millimetres
 */
export function struckReadings(survey: Survey, lead: number): readonly LostMotion[] {
  const { readings } = survey;
  if (readings.every(({ excluded }) => excluded === undefined)) return [];
  const counting = readings.map(({ excluded: _why, ...reading }) => reading);
  return correct({ ...survey, readings: counting }, lead).readings.filter(({ from }) =>
    from.some((index) => readings[index]?.excluded !== undefined),
  );
}
