import { BARE_NUMBER_RANK, type Heading, type Role } from "./heading.ts";

/** Which columns (0-based) hold what. Repeats give more than one column, or pair of columns, of readings. */
export interface Layout {
  readonly position: number;
  readonly values: readonly ValueColumns[];
  readonly note: number | undefined;
  readonly time: number | undefined;
  readonly excluded: number | undefined;
}

export type ValueColumns =
  | { readonly backlash: number }
  | { readonly advancing: number; readonly retracting: number };

/** Why a row of headings cannot be read as one. */
export interface Unclear {
  readonly unclear: string;
}

/** Whether a row names what is needed: a position with a backlash, or with advancing and retracting. */
export function isHeadingRow(headings: readonly Heading[]): boolean {
  const has = (role: Role): boolean => columnsFor(headings, role).length > 0;
  const inOrder = columnsFor(headings, "backlash").every((column, index) => {
    const { rank, repeat } = headings[column] ?? {};
    return rank !== BARE_NUMBER_RANK || repeat === index + 1;
  });
  return has("position") && ((has("backlash") && inOrder) || (has("advancing") && has("retracting")));
}

/**
 * Settles which columns are read. Pairs are taken before a backlash worked out from them, since readings stay as
 * they were read, unless only single readings fit the method.
 */
export function layoutOf(headings: readonly Heading[], singleReadings: boolean): Layout | Unclear {
  const [position, ...otherPositions] = columnsFor(headings, "position");
  if (position === undefined || otherPositions.length > 0) {
    return { unclear: `${otherPositions.length + 1} columns could be the position` };
  }
  const ways = singleReadings ? [backlashColumns, pairColumns] : [pairColumns, backlashColumns];
  const values = ways
    .map((columnsIn) => columnsIn(headings))
    .find((columns) => "unclear" in columns || columns.length > 0);
  if (values === undefined) return { unclear: "no column holds the readings" };
  if ("unclear" in values) return values;
  if (areHalves(headings, values)) {
    return {
      unclear: "with a direction beside it each reading is half of a pair, and the halves are not in one row",
    };
  }
  return {
    position,
    values,
    note: columnsFor(headings, "note")[0],
    time: columnsFor(headings, "time")[0],
    excluded: columnsFor(headings, "excluded")[0],
  };
}

/** Whether each row holds one reading in one direction, which is no lost motion in itself. */
function areHalves(headings: readonly Heading[], values: readonly ValueColumns[]): boolean {
  const hasDirection = headings.some(({ role }) => role === "direction");
  return hasDirection && values.some((value) => "backlash" in value && headings[value.backlash]?.rank !== 0);
}

/** The columns that hold numbers, the position first. */
export function numberColumns({ position, values }: Layout): readonly number[] {
  return [position, ...values.flatMap(columnsOf)];
}

/** The columns of one reading. */
export function columnsOf(value: ValueColumns): readonly number[] {
  return "backlash" in value ? [value.backlash] : [value.advancing, value.retracting];
}

/** Of the columns with a role, the most plainly headed. */
function columnsFor(headings: readonly Heading[], role: Role): readonly number[] {
  const inRole = headings.filter((heading) => heading.role === role);
  const plainest = inRole.reduce((least, { rank }) => Math.min(least, rank), Number.POSITIVE_INFINITY);
  return headings.flatMap((heading, column) =>
    heading.role === role && heading.rank === plainest ? [column] : [],
  );
}

function backlashColumns(headings: readonly Heading[]): readonly ValueColumns[] | Unclear {
  const columns = columnsFor(headings, "backlash");
  const words = new Set(columns.map((column) => headings[column]?.words));
  if (words.size > 1) {
    return { unclear: `the columns "${[...words].join('" and "')}" could each be the backlash` };
  }
  return columns.map((backlash) => ({ backlash }));
}

/** Advancing and retracting by the numbers of their repeats, else in the order of the file. */
function pairColumns(headings: readonly Heading[]): readonly ValueColumns[] | Unclear {
  const repeatOf = (column: number): number => headings[column]?.repeat ?? 0;
  const inOrder = (role: Role): readonly number[] =>
    [...columnsFor(headings, role)].sort((a, b) => repeatOf(a) - repeatOf(b));
  const retracting = inOrder("retracting");
  const advancing = inOrder("advancing");
  if (advancing.length === 0 || retracting.length === 0) return [];
  const columns = advancing.flatMap((column, index) => {
    const other = retracting[index];
    return other === undefined || repeatOf(other) !== repeatOf(column)
      ? []
      : [{ advancing: column, retracting: other }];
  });
  return columns.length === Math.max(advancing.length, retracting.length)
    ? columns
    : { unclear: "the columns of advancing and retracting do not pair up" };
}
