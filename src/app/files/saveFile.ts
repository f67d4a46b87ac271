import type { Assessment } from "../../analysis/assessment.ts";
import { fileNameFor } from "../../inspection/fileName.ts";
import { inspectionText } from "../../inspection/open.ts";
import type { Inspection, Survey } from "../../inspection/schema.ts";
import { surveyCsv } from "../../intake/writeCsv.ts";
import { selfContained } from "../../records/pictures.ts";
import { profileCsv } from "../../report/profileCsv.ts";
import { decimalMark } from "./decimalMark.ts";
import { download } from "./download.ts";

/**
 * Hands the inspection to the reader as a file, named after the slide, with its photographs in it.
 *
 * @returns how many photographs it lacks, as this browser does not have them any more
 */
export async function saveFile(inspection: Inspection): Promise<number> {
  const { data, missing } = await selfContained(inspection);
  download(`${nameOf(inspection)}.json`, inspectionText(data), "application/json");
  return missing;
}

/** Hands the readings of a survey to the reader as CSV, named after slide and survey. */
export function saveReadings(inspection: Inspection, survey: Survey): void {
  const name = `${surveyFileName(inspection, survey.id)}.csv`;
  download(name, surveyCsv(inspection, survey, decimalMark()), "text/csv");
}

/** Hands the profile of an assessed survey to the reader as CSV. */
export function saveProfile(inspection: Inspection, assessment: Assessment): void {
  const name = `${surveyFileName(inspection, assessment.survey)}-profile.csv`;
  download(name, profileCsv(assessment, inspection.slide.units, decimalMark()), "text/csv");
}

/** The name for a file about one survey, after slide and survey, without its ending. */
export function surveyFileName(inspection: Inspection, survey: string): string {
  return `${nameOf(inspection)}-${fileNameFor(survey, "survey")}`;
}

/** The name for a file about two surveys, after slide and both, without its ending. */
export function comparisonFileName(inspection: Inspection, from: string, to: string): string {
  return `${surveyFileName(inspection, from)}-and-${fileNameFor(to, "survey")}`;
}

function nameOf({ slide }: Inspection): string {
  return fileNameFor(slide.name, "inspection");
}
