import type { Survey } from "../../inspection/schema.ts";
import type { Random } from "../statistics/random.ts";

/** What an indicator does to lost motion: it shows `factor` of it, and `offset` on top. */
export interface ReadingError {
  readonly factor: number;
  readonly offset: number;
}

/** A survey's indicator, with the greatest lost motion that it was used on, in millimetres. */
export interface IndicatorUse {
  readonly survey: Survey;
  readonly greatest: number;
}

/** Surveys share an indicator where both name it, and name the same one. */
export function sameIndicator(one: Survey, other: Survey): boolean {
  const name = one.indicator?.name?.trim();
  return name !== undefined && name !== "" && name === other.indicator?.name?.trim();
}

/**
 * Draws the errors of the indicators of two surveys. The stated limit of error is taken as an error of scale that is
 * anywhere up to the limit at the greatest lost motion read (rectangular, GUM 4.3.7); hysteresis as a width that is
 * anywhere about its middle (rectangular). One indicator has one error in both surveys: of a difference, what is
 * common falls out. Two indicators err each on their own.
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

/** The error of one indicator. */
export function drawError({ indicator }: Survey, greatest: number, random: Random): ReadingError {
  const scale = greatest > 0 ? (indicator?.error ?? 0) / greatest : 0;
  return {
    factor: 1 + scale * (2 * random() - 1),
    offset: (indicator?.hysteresis ?? 0) * (random() - 0.5),
  };
}

/** Lost motion as it is, of lost motion as it was read. */
export function withoutError(lostMotion: number, { factor, offset }: ReadingError): number {
  return (lostMotion - offset) / factor;
}
