import { readingInUnits, slideLengths, surveyLengths } from "../../../inspection/metric.ts";
import { type Plain, valueAt } from "../../../inspection/parts.ts";
import type { Inspection } from "../../../inspection/schema.ts";
import { fromMillimetres, toMillimetres, type Units } from "../../../inspection/units.ts";
import type { CsvReadings } from "../../../intake/readCsv.ts";
import { type UnitDoubt, unitDoubts } from "../../../intake/unitDoubts.ts";

/** A log's readings and data in the unit that the slide is kept in; as they are where it has none yet. */
export function inSlideUnits(csv: CsvReadings, kept: Units | undefined): CsvReadings {
  const { units: from } = csv;
  if (from === undefined || kept === undefined || from === kept) return csv;
  const { slide, survey, ...others } = csv.slideData;
  return {
    ...csv,
    units: kept,
    readings: csv.readings.map((reading) => readingInUnits(reading, csv.method, from, kept)),
    slideData: {
      ...others,
      slide: slideLengths(slide, from, kept),
      survey: surveyLengths(survey, from, kept),
    },
  };
}

/** Units of a log in which its figures make no sense on this slide, or on the one that the log itself describes. */
export function unitDoubtsOf(csv: CsvReadings, inspection: Inspection | null): readonly UnitDoubt[] {
  const { units } = csv;
  if (units === undefined) return [];
  if (inspection === null) return unitDoubts(csv, travelIn(csv.slideData.slide));
  const { travel, units: kept } = inspection.slide;
  const inLog = (length: number): number => fromMillimetres(toMillimetres(length, kept), units);
  return unitDoubts(csv, { from: inLog(travel.from), to: inLog(travel.to) });
}

function travelIn(slide: Plain): { readonly from: number; readonly to: number } | undefined {
  const from = valueAt(slide, "travel.from");
  const to = valueAt(slide, "travel.to");
  return typeof from === "number" && typeof to === "number" && from < to ? { from, to } : undefined;
}
