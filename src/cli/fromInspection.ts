import { surveyInUnits } from "../inspection/metric.ts";
import { openPartialInspection } from "../inspection/open.ts";
import { failed, type Outcome, succeeded } from "../inspection/problem.ts";
import { isPair } from "../inspection/readingShapes.ts";
import type { PartialInspection } from "../inspection/schema.ts";
import { type CureForMissing, missingFrom, type Wanted } from "../intake/missing.ts";
import { combine, type Statement } from "../intake/statements.ts";
import { type FileRead, optionsLine, type StatedOutside, statementsOf } from "./fileRead.ts";
import { optionsFor } from "./overrides.ts";

const BY = "the file";

/** The surveys of an inspection file. A unit given on the command line is the one that all is brought to. */
export function fromInspection<Made extends PartialInspection>(
  text: string,
  outside: StatedOutside,
  wanted: Wanted<Made>,
): Outcome<FileRead<Made>> {
  const opened = openPartialInspection(text);
  if (!opened.ok) return opened;
  const { slide, surveys } = opened.value;
  const units = outside.command.units ?? slide.units;
  const others = statementsOf(outside);
  const ofSlide = combine([{ by: BY, units: slide.units, slide }, ...others.map(slidePart)], units);
  const ofSurveys = surveys.map((survey) =>
    combine(
      [{ by: BY, units, survey: surveyInUnits(survey, slide.units, units) }, ...others.map(surveyPart)],
      units,
    ),
  );
  const inDivisions = surveys.findIndex((each) => each.method === "dial-pair" && each.readings.some(isPair));
  const survey = ofSurveys[Math.max(0, inDivisions)]?.survey;
  const missing = missingFrom({ slide: ofSlide.slide, survey }, wanted, inDivisions !== -1, cureForFile);
  if (missing !== undefined) return { ok: false, problem: missing };
  const inspection = wanted.read({
    ...opened.value,
    slide: ofSlide.slide,
    surveys: ofSurveys.map(({ survey }) => survey),
  });
  if (!inspection.ok) {
    const { where, what } = inspection.problem;
    return failed(where, what, "The file alone is in order: correct the options or the slide given with it.");
  }
  return succeeded({
    inspection: inspection.value,
    refused: [],
    surveys: inspection.value.surveys.map(({ id }, index) => ({
      inspection: inspection.value,
      survey: id,
      assumed: [...optionsLine(outside), ...ofSlide.overridden, ...(ofSurveys[index]?.overridden ?? [])],
    })),
  });
}

const cureForFile: CureForMissing = (keys) => {
  const options = optionsFor(keys);
  return options === "" ? "Write it in the file." : `Give ${options}, or write it in the file.`;
};

function slidePart({ by, units, slide = {} }: Statement): Statement {
  return { by, units, slide };
}

function surveyPart({ by, units, survey = {} }: Statement): Statement {
  return { by, units, survey };
}
