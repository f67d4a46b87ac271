import type { Inspection, Reading, Slide, Survey } from "./schema.ts";
import { isPair, isPositioning } from "./schema.ts";
import { millimetresPer } from "./units.ts";

/** A slide or survey whose lengths are all in millimetres; only what the analysis uses is converted and typed. */
export type MetricSlide = Slide & { readonly units: "mm" };

/** The slide with every length in millimetres. Keys this program does not know are left as they are. */
export function slideInMillimetres(slide: Slide): MetricSlide {
  const { screw, nut } = slide;
  const convert = converter(millimetresPer(slide.units));
  return {
    ...slide,
    units: "mm",
    ...convert(slide, ["backlashLimit", "runningClearance", "endFloatAttainable"]),
    travel: { ...slide.travel, ...convert(slide.travel, ["from", "to"]) },
    ...(slide.workingRange && {
      workingRange: { ...slide.workingRange, ...convert(slide.workingRange, ["from", "to"]) },
    }),
    screw: { ...screw, ...convert(screw, ["lead", "nominalDiameter"]) },
    ...(nut && {
      nut: {
        ...nut,
        ...convert(nut, ["engagedLength", "takeUpLeft", "takeUpUsed", "clearanceNew", "wearLimit"]),
      },
    }),
  } as MetricSlide;
}

/** A survey of a slide kept in the given units, with every length in millimetres; dial divisions stay divisions. */
export function surveyInMillimetres(survey: Survey, units: Slide["units"]): Survey {
  const factor = millimetresPer(units);
  const convert = converter(factor);
  const reading = (item: Reading): Reading => {
    if (isPositioning(item)) return { ...item, ...convert(item, ["target", "reading"]) };
    if (isPair(item)) {
      const inDivisions = survey.method === "dial-pair";
      return {
        ...item,
        ...convert(item, inDivisions ? ["position"] : ["position", "advancing", "retracting"]),
      };
    }
    return { ...item, ...convert(item, ["position", "backlash"]) };
  };
  return {
    ...survey,
    ...(survey.indicator && {
      indicator: { ...survey.indicator, ...convert(survey.indicator, ["resolution", "error", "hysteresis"]) },
    }),
    ...(survey.dial && { dial: { ...survey.dial, ...convert(survey.dial, ["travelPerDivision"]) } }),
    ...(survey.endFloat && { endFloat: survey.endFloat.map((value) => value * factor) }),
    ...convert(survey, ["drivePlay"]),
    readings: survey.readings.map(reading),
  };
}

/** The whole inspection with every length in millimetres. */
export function inMillimetres(inspection: Inspection): Inspection {
  return {
    ...inspection,
    slide: slideInMillimetres(inspection.slide),
    surveys: inspection.surveys.map((survey) => surveyInMillimetres(survey, inspection.slide.units)),
  };
}

/** Multiplies the named keys that hold a number. */
function converter(factor: number) {
  return <Source extends object, Key extends keyof Source & string>(
    source: Source,
    keys: readonly Key[],
  ): Partial<Record<Key, number>> => {
    const converted: Partial<Record<Key, number>> = {};
    for (const key of keys) {
      const value = source[key];
      if (typeof value === "number") converted[key] = value * factor;
    }
    return converted;
  };
}
