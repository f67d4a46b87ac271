import { surveyInUnits } from "../inspection/metric.ts";
import { openInspection, readInspection } from "../inspection/open.ts";
import { failed, type Outcome, succeeded } from "../inspection/problem.ts";
import { combine, type Statement } from "../intake/statements.ts";
import { type FileRead, optionsLine, type SaidElsewhere, statementsOf } from "./fileRead.ts";

const BY = "the file";

/** The surveys of an inspection file. A unit given on the command line is the one that all is brought to. */
export function fromInspection(text: string, elsewhere: SaidElsewhere): Outcome<FileRead> {
  const opened = openInspection(text);
  if (!opened.ok) return opened;
  const { slide, surveys } = opened.value;
  const units = elsewhere.command.units ?? slide.units;
  const others = statementsOf(elsewhere);
  const ofSlide = combine([{ by: BY, units: slide.units, slide }, ...others.map(slidePart)], units);
  const ofSurveys = surveys.map((survey) =>
    combine(
      [{ by: BY, units, survey: surveyInUnits(survey, slide.units, units) }, ...others.map(surveyPart)],
      units,
    ),
  );
  const inspection = readInspection({
    ...opened.value,
    slide: ofSlide.slide,
    surveys: ofSurveys.map(({ survey }) => survey),
  });
  if (!inspection.ok) {
    const { where, what } = inspection.problem;
    return failed(where, what, "The file alone is in order: correct the options or the slide given with it.");
  }
  return succeeded({
    refused: [],
    surveys: inspection.value.surveys.map(({ id }, index) => ({
      inspection: inspection.value,
      survey: id,
      assumed: [...optionsLine(elsewhere), ...ofSlide.overridden, ...(ofSurveys[index]?.overridden ?? [])],
    })),
  });
}

function slidePart({ by, units, slide = {} }: Statement): Statement {
  return { by, units, slide };
}

function surveyPart({ by, units, survey = {} }: Statement): Statement {
  return { by, units, survey };
}
