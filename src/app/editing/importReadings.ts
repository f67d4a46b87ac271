import { readInspection } from "../../inspection/open.ts";
import { merged, type PlainObject, valueAt } from "../../inspection/plainData.ts";
import type { Reading, Survey } from "../../inspection/schema.ts";
import type { CsvReadings } from "../../intake/readCsv.ts";
import type { EditorState, PendingInput } from "../../records/editorState.ts";
import { readingForm, readingForms } from "./columns.ts";
import { SETUP_FIELDS } from "./fieldList.ts";
import { fieldText } from "./fieldText.ts";
import { type Row, rowsFrom, rowsOf, withRows } from "./rows.ts";
import { withSetupText } from "./slideSetup.ts";
import { nextSurvey, withSurvey } from "./surveys.ts";

/** The pending input with a log: its readings wait for the slide, and its data fill the setup fields. */
export function withWaitingReadings(draft: PendingInput, csv: CsvReadings): PendingInput {
  const { readings, method, units, slideData } = csv;
  const slide = units === undefined ? slideData.slide : { ...slideData.slide, units };
  const waiting = {
    method,
    readings,
    slide,
    survey: slideData.survey,
    others: slideData.inspection,
    ...(units && { units }),
  };
  return Object.values(SETUP_FIELDS).reduce<PendingInput>(
    (filled, { path }) => {
      const value = valueAt(slide, path);
      return value === undefined ? filled : withSetupText(filled, path, fieldText(value));
    },
    { ...draft, waiting },
  );
}

/** Whether a log's readings can be added to those of a survey. */
export function canJoinSurvey(survey: Survey, { method, readings }: CsvReadings): boolean {
  if (survey.readings.length === 0) return true;
  return (
    survey.method === method || readings.every((item) => readingForms(survey).includes(readingForm(item)))
  );
}

/** The state with a log's readings after those of a survey; an empty survey gets the log's method and data. */
export function withReadingsAdded(state: EditorState, survey: Survey, csv: CsvReadings): EditorState {
  const before = rowsOf(state.draft, survey);
  const isEmpty = survey.readings.length === 0;
  const { method, slideData } = csv;
  const prepared = withSurveyData(
    state,
    survey,
    isEmpty ? { ...slideData.survey, method } : { method: survey.method, ...noteOf(survey, csv) },
  );
  return withRows(prepared, survey.id, [...before, ...rowsFrom(csv.readings)]);
}

/** The state with a log's readings in place of those of a survey. */
export function withReadingsReplaced(state: EditorState, survey: Survey, csv: CsvReadings): EditorState {
  const prepared = withSurveyData(
    state,
    { ...survey, readings: [] },
    {
      method: csv.method,
      ...noteOf(survey, csv),
    },
  );
  return withRows(prepared, survey.id, rowsFrom(csv.readings));
}

/** The survey's note with the note of a log appended. */
function noteOf({ note }: Survey, { slideData }: CsvReadings): PlainObject {
  const added = slideData.survey.note;
  if (typeof added !== "string" || note?.includes(added)) return {};
  return { note: note === undefined ? added : `${note} ${added}` };
}

/** The state with a new survey of a log's readings, and its id. */
export function withSurveyAdded(
  state: EditorState,
  csv: CsvReadings,
): { readonly state: EditorState; readonly survey: string } {
  const survey = nextSurvey(state.inspection?.surveys ?? []);
  const data = { ...csv.slideData.survey, method: csv.method };
  const prepared = withSurveyData(withSurvey(state, survey), survey, data);
  return { state: withRows(prepared, survey.id, rowsFrom(csv.readings)), survey: survey.id };
}

/** The rows without the given readings, each removed once. */
export function withoutReadings(rows: readonly Row[], readings: readonly Reading[]): readonly Row[] {
  const left = rowsFrom(readings).map(figuresOf);
  return rows.filter((row) => {
    const at = left.indexOf(figuresOf(row));
    if (at !== -1) left.splice(at, 1);
    return at === -1;
  });
}

function figuresOf({ cells }: Row): string {
  return JSON.stringify(Object.entries(cells).map(([name, text]) => [name, Number(text)]));
}

/** The state with a log's data on a survey, as far as they are valid; the survey's id stays. */
function withSurveyData(state: EditorState, survey: Survey, data: PlainObject): EditorState {
  const { inspection } = state;
  if (inspection === null) return state;
  const replaced = (changed: PlainObject): PlainObject => ({
    ...inspection,
    surveys: inspection.surveys.map((each) => (each.id === survey.id ? changed : each)),
  });
  const whole = readInspection(replaced({ ...merged(survey, data), id: survey.id }));
  const valid = whole.ok ? whole : readInspection(replaced({ ...survey, method: data.method }));
  return valid.ok ? { ...state, inspection: valid.value } : state;
}
