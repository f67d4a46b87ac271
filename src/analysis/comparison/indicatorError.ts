import type { Survey } from "../../inspection/schema.ts";
import type { Random } from "../statistics/random.ts";

/** The error of an indicator: it shows `factor` × lost motion + `offset` (millimetres). */
export interface ReadingError {
  readonly factor: number;
  readonly offset: number;
}

/** A survey with its indicator, and the greatest lost motion read with it, in millimetres. */
export interface IndicatorUse {
  readonly survey: Survey;
  readonly greatest: number;
}

/** Whether both surveys name the same indicator. */
export function sameIndicator(one: Survey, other: Survey): boolean {
  const name = one.indicator?.name?.trim();
  return name !== undefined && name !== "" && name === other.indicator?.name?.trim();
}

/**
 * Draws the errors of the indicators of two surveys. The limit of error counts as an error of scale, uniform up to the
 * limit at the greatest lost motion read (rectangular, GUM 4.3.7); hysteresis as an offset, uniform about zero. One
 * indicator has the same error in both surveys, so that it cancels in a difference; two have independent errors.
 */
export function drawErrors(
  from: IndicatorUse,
  to: IndicatorUse,
  random: Random,
): { readonly from: ReadingError; readonly to: ReadingError } {
  if (sameIndicator(from.survey, to.survey)) {
    const common = drawError(to.survey, Math.max(from.greatest, to.greatest), random);
    return { from: common, to: common };
  }
  return {
    from: drawError(from.survey, from.greatest, random),
    to: drawError(to.survey, to.greatest, random),
  };
}

/** Draws the error of one indicator. */
export function drawError({ indicator }: Survey, greatest: number, random: Random): ReadingError {
  const scale = greatest > 0 ? (indicator?.error ?? 0) / greatest : 0;
  return {
    factor: 1 + scale * (2 * random() - 1),
    offset: (indicator?.hysteresis ?? 0) * (random() - 0.5),
  };
}

/** True lost motion from lost motion as read, in millimetres. */
export function withoutError(lostMotion: number, { factor, offset }: ReadingError): number {
  return (lostMotion - offset) / factor;
}
