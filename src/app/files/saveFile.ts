import type { Assessment } from "../../analysis/assessment.ts";
import { fileNameFor } from "../../inspection/fileName.ts";
import { inspectionText } from "../../inspection/open.ts";
import type { Inspection, Survey } from "../../inspection/schema.ts";
import { surveyCsv } from "../../intake/writeCsv.ts";
import { selfContained } from "../../records/pictures.ts";
import { profileCsv } from "../../report/profileCsv.ts";
import { decimalMark, download } from "./download.ts";

/**
 * Downloads the inspection as a file named after the slide, with its photographs.
 *
 * @returns the number of photographs that are missing because this browser no longer has them
 */
export async function saveFile(inspection: Inspection): Promise<number> {
  const { data, missing } = await selfContained(inspection);
  download(`${nameOf(inspection)}.json`, inspectionText(data), "application/json");
  return missing;
}

/** Downloads the readings of a survey as CSV. */
export function saveReadings(inspection: Inspection, survey: Survey): void {
  const name = `${surveyFileName(inspection, survey.id)}.csv`;
  download(name, surveyCsv(inspection, survey, decimalMark()), "text/csv");
}

/** Downloads the profile of an assessed survey as CSV. */
export function saveProfile(inspection: Inspection, assessment: Assessment): void {
  const name = `${surveyFileName(inspection, assessment.survey)}-profile.csv`;
  download(name, profileCsv(assessment, inspection.slide.units, decimalMark()), "text/csv");
}

/** The name of a file about one survey, without its extension. */
export function surveyFileName(inspection: Inspection, survey: string): string {
  return `${nameOf(inspection)}-${fileNameFor(survey, "survey")}`;
}

/** The name of a file about two surveys, without its extension. */
export function comparisonFileName(inspection: Inspection, from: string, to: string): string {
  return `${surveyFileName(inspection, from)}-and-${fileNameFor(to, "survey")}`;
}

function nameOf({ slide }: Inspection): string {
  return fileNameFor(slide.name, "inspection");
}
