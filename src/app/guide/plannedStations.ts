import { settingsOf } from "../../analysis/settings.ts";
import { lengthsIn } from "../../inspection/lengths.ts";
import { slideInMillimetres } from "../../inspection/metric.ts";
import type { Slide } from "../../inspection/schema.ts";
import { fromMillimetres, roundTo } from "../../inspection/units.ts";

/** Where to read a slide, in the order of reading, in its own units: along the travel and back. */
export function plannedStations(slide: Slide): readonly number[] {
  const { settings } = settingsOf(slideInMillimetres(slide), lengthsIn(slide.units));
  const { travel, engagedLength } = settings;
  const length = travel.to - travel.from;
  const count = Math.min(40, Math.max(5, Math.ceil(length / (0.45 * engagedLength)) + 1));
  const out = Array.from({ length: count }, (_, index) => {
    const position = fromMillimetres(travel.from + (length * index) / (count - 1), slide.units);
    return roundTo(position, slide.units === "in" ? 2 : 0);
  });
  return [...out, ...out.toReversed()];
}
