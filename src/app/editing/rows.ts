import type { Reading, Survey } from "../../inspection/schema.ts";
import type { Units } from "../../inspection/units.ts";
import {
  awaitsReading,
  type EditorState,
  type PendingInput,
  type UnreadRow,
} from "../../records/editorState.ts";
import {
  type Column,
  type ColumnName,
  columnsOf,
  FORM_COLUMNS,
  type ReadingForm,
  readingForm,
  readingForms,
} from "./columns.ts";

/** A row of the table of readings, as typed. */
export interface Row {
  /** Identifies the row while the page is open. */
  readonly key: number;
  readonly cells: Readonly<Partial<Record<ColumnName, string>>>;
  /** Data of the reading besides its figures: why it is excluded, its note, keys that this program does not know. */
  readonly marks: Readonly<Record<string, unknown>>;
}

export interface CellProblem {
  readonly column: ColumnName;
  readonly kind: "missing" | "unreadable";
  readonly what: string;
}

export type RowResult =
  | { readonly state: "blank" }
  | { readonly state: "read"; readonly reading: Reading }
  | { readonly state: "unread"; readonly problems: readonly CellProblem[] };

/** More decimals than any indicator shows. */
const MAX_DECIMALS = 9;

let lastKey = 0;

export function blankRow(): Row {
  lastKey += 1;
  return { key: lastKey, cells: {}, marks: {} };
}

/** Why a row is excluded, or null. */
export function exclusionReason(row: Row): string | null {
  const { excluded } = row.marks;
  return typeof excluded === "string" ? excluded : null;
}

type RowReader = (row: Row) => RowResult;

/** By everything that the reading of a row depends on besides the row itself. */
const readers = new Map<string, RowReader>();

/** A row as a reading of its survey, or the problems of its cells. */
export function readRow(row: Row, survey: Survey, units: Units): RowResult {
  return rowReader(survey, units)(row);
}

/** Reads the rows of a survey, each unchanged row once: a key typed changes only one of them. */
export function rowReader(survey: Survey, units: Units): RowReader {
  const forms = readingForms(survey);
  const needsDial = survey.method === "dial-pair" && survey.dial === undefined;
  const key = [...forms, survey.method, needsDial, units].join();
  const known = readers.get(key);
  if (known !== undefined) return known;
  const columns = columnsOf(survey, units);
  const read = new WeakMap<Row, RowResult>();
  const reader: RowReader = (row) => {
    const reading = read.get(row) ?? parseRow(row, columns, forms, needsDial);
    read.set(row, reading);
    return reading;
  };
  readers.set(key, reader);
  return reader;
}

function parseRow(
  row: Row,
  columns: readonly Column[],
  forms: readonly ReadingForm[],
  needsDial: boolean,
): RowResult {
  const isTyped = (name: ColumnName): boolean => (row.cells[name] ?? "").trim() !== "";
  if (!columns.some(({ name }) => isTyped(name))) {
    return Object.keys(row.marks).every((mark) => mark === "time")
      ? { state: "blank" }
      : { state: "unread", problems: missing(columns) };
  }
  const form = formOfRow(isTyped, forms);
  const values: Partial<Record<ColumnName, number | string>> = {};
  const problems: CellProblem[] = [];
  for (const column of columns.filter(({ name }) => FORM_COLUMNS[form].includes(name))) {
    if (!isTyped(column.name)) {
      problems.push(...missing([column]));
      continue;
    }
    const read = column.read(row.cells[column.name] ?? "");
    if (read.ok) values[column.name] = read.value;
    else
      problems.push({
        column: column.name,
        kind: "unreadable",
        what: `${column.label} ${read.problem.what}. ${read.problem.cure}`,
      });
  }
  if (form === "pair" && needsDial) {
    problems.push({ column: "advancing", kind: "missing", what: "Needs the travel per division, above." });
  }
  return problems.length > 0
    ? { state: "unread", problems }
    : { state: "read", reading: { ...values, ...row.marks } as Reading };
}

/** The form that the filled cells of a row belong to, or the first of the survey. */
function formOfRow(isTyped: (name: ColumnName) => boolean, forms: readonly ReadingForm[]): ReadingForm {
  const own = (form: ReadingForm) => FORM_COLUMNS[form].filter((name) => name !== "position");
  return forms.find((form) => own(form).some(isTyped)) ?? forms[0] ?? "backlash";
}

function missing(columns: readonly Column[]): readonly CellProblem[] {
  return columns.map(({ name, label }) => ({
    column: name,
    kind: "missing",
    what: `${label} is missing.`,
  }));
}

/** The rows of a survey's table: its readings, with the unread rows in their places. */
export function rowsOf(draft: PendingInput, survey: Survey): readonly Row[] {
  const rows = [...rowsFrom(survey.readings)];
  const unread = draft.rows.filter((row) => row.survey === survey.id).sort((a, b) => a.row - b.row);
  for (const { row, cells, marks } of unread) rows.splice(row, 0, { ...blankRow(), cells, marks });
  return rows;
}

/** Readings as rows. All figures of a column have the same decimals, so that 0.2 is shown as 0.20 beside 0.21. */
export function rowsFrom(readings: readonly Reading[]): readonly Row[] {
  const decimals = new Map<ColumnName, number>();
  for (const reading of readings) {
    for (const name of FORM_COLUMNS[readingForm(reading)]) {
      decimals.set(name, Math.max(decimals.get(name) ?? 0, decimalsIn(reading[name])));
    }
  }
  return readings.map((reading) => {
    const { ...marks }: Record<string, unknown> = reading;
    const cells: Partial<Record<ColumnName, string>> = {};
    for (const name of FORM_COLUMNS[readingForm(reading)]) {
      cells[name] = cellText(name, marks[name], decimals.get(name) ?? 0);
      delete marks[name];
    }
    return { ...blankRow(), cells, marks };
  });
}

/** A figure with more decimals than its column keeps them: a cell must read as the value that it shows. */
function cellText(name: ColumnName, value: unknown, decimals: number): string {
  if (typeof value !== "number") return name === "direction" ? String(value).slice(0, 3) : String(value);
  const text = value.toFixed(decimals);
  return Number(text) === value ? text : String(value);
}

/** The decimals of a figure; 0 beyond `MAX_DECIMALS`, so that a rounding error does not set them for the column. */
function decimalsIn(value: unknown): number {
  if (typeof value !== "number") return 0;
  const [mantissa = "", exponent = "0"] = String(value).split("e");
  const decimals = (mantissa.split(".")[1] ?? "").length - Number(exponent);
  return decimals > MAX_DECIMALS ? 0 : Math.max(0, decimals);
}

/** The rows with a new reading after the last one taken; it replaces a row that awaits a reading at its position. */
export function withReading(rows: readonly Row[], row: Row): readonly Row[] {
  const waiting = rows.findIndex(
    (other) => awaitsReading(other) && Number(other.cells.position) === Number(row.cells.position),
  );
  const others = waiting === -1 ? rows : rows.toSpliced(waiting, 1);
  const last = others.findLastIndex((other) => !awaitsReading(other));
  return others.toSpliced(last + 1, 0, row);
}

/** The state with these rows of a survey: readable rows become its readings, the others pending input. */
export function withRows(state: EditorState, surveyId: string, rows: readonly Row[]): EditorState {
  if (state.inspection === null) return state;
  const { slide } = state.inspection;
  const survey = state.inspection.surveys.find(({ id }) => id === surveyId);
  if (survey === undefined) return state;
  const readings: Reading[] = [];
  const unread: UnreadRow[] = [];
  const readRowOf = rowReader(survey, slide.units);
  for (const row of rows) {
    const read = readRowOf(row);
    if (read.state === "read") readings.push(read.reading);
    if (read.state === "unread") {
      const { cells, marks } = row;
      unread.push({ survey: surveyId, row: readings.length + unread.length, cells, marks });
    }
  }
  const surveys = state.inspection.surveys.map((item) =>
    item.id === surveyId ? { ...item, readings } : item,
  );
  const others = state.draft.rows.filter((row) => row.survey !== surveyId);
  return {
    inspection: { ...state.inspection, surveys },
    draft: { ...state.draft, rows: [...others, ...unread] },
  };
}

/** The state with readings that no cell accepts, such as a kilometre from a file, turned into unread rows. */
export function withUnreadableRows(state: EditorState): EditorState {
  const { inspection, draft } = state;
  if (inspection === null) return state;
  const hasUnreadable = (survey: Survey): boolean => {
    const read = rowReader(survey, inspection.slide.units);
    return rowsFrom(survey.readings).some((row) => read(row).state !== "read");
  };
  return inspection.surveys
    .filter(hasUnreadable)
    .reduce((shown, survey) => withRows(shown, survey.id, rowsOf(draft, survey)), state);
}
