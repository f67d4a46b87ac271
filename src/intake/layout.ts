import { type Method, takesPairs } from "../inspection/methods.ts";
import { BARE_NUMBER_RANK, type Heading } from "./heading.ts";
import type { Role } from "./vocabulary.ts";

/** The columns (0-based) of one reading; `at` holds its position or target. */
export type ValueColumns =
  | { readonly at: number; readonly backlash: number }
  | { readonly at: number; readonly advancing: number; readonly retracting: number }
  /** Half of a pair, whose other half stands in another row. */
  | { readonly at: number; readonly half: number; readonly direction: number }
  | {
      readonly at: number;
      readonly reading: number;
      /** A column of directions, or the one direction of the whole column of readings. */
      readonly direction: number | "advancing" | "retracting";
      /** A column that counts the runs; where there is none, the run of the whole column, or none to count them by. */
      readonly run: number | undefined;
      readonly repeat: number | undefined;
    };

/** What a reading carries beside its figures. */
export const MARK_NAMES = ["date", "time", "note", "excluded", "other keys"] as const;

/** A column of what a reading carries beside its figures. */
export interface MarkColumn {
  readonly name: (typeof MARK_NAMES)[number];
  readonly column: number;
}

export interface Layout {
  /**
   * The ways in which a row may give its readings, each with the columns of every repeat. A row is read in the first
   * way that it has anything in.
   */
  readonly ways: readonly [readonly ValueColumns[], ...(readonly ValueColumns[])[]];
  readonly marks: readonly MarkColumn[];
}

/** Why a row of headings cannot be read as one, and what the reader could say to settle it. */
export interface Unclear {
  readonly unclear: string;
  readonly asks: "columns" | "method";
}

/** Whether a row names what is needed: a position with a backlash or with both directions, or targets. */
export function isHeadingRow(headings: readonly Heading[]): boolean {
  const has = (role: Role): boolean => columnsFor(headings, role).length > 0;
  const inOrder = columnsFor(headings, "backlash").every((column, index) => {
    const { rank, repeat } = headings[column] ?? {};
    return rank !== BARE_NUMBER_RANK || repeat === index + 1;
  });
  const hasReadings = (has("backlash") && inOrder) || (has("advancing") && has("retracting"));
  return (has("position") && hasReadings) || (has("target") && (hasReadings || has("reading")));
}

/**
 * Settles which columns are read. Positions at targets come before pairs, and pairs before a backlash worked out from
 * them, since readings stay as they were read; but only what fits the method, where one is given.
 */
export function layoutOf(headings: readonly Heading[], method: Method | undefined): Layout | Unclear {
  const ways = [
    ...(method === undefined || method === "positioning" ? [positioningColumns(headings, method)] : []),
    ...(method === "positioning" ? [] : [pairColumns(headings, method)]),
  ];
  const backlash = backlashColumns(headings, method);
  const inOrder = method === "push-pull" ? [backlash, ...ways] : [...ways, backlash];
  // A second way is there to be read where the first has nothing: what is unclear about it alone is left out.
  const first = inOrder.find((way) => "unclear" in way || way.length > 0);
  if (first === undefined) return { unclear: missingIn(headings), asks: "columns" };
  if ("unclear" in first) return first;
  const others = inOrder.slice(inOrder.indexOf(first) + 1).flatMap((way) => ("unclear" in way ? [] : [way]));
  const marks = MARK_NAMES.flatMap((name) => {
    const [column] = columnsFor(headings, name);
    return column === undefined ? [] : [{ name, column }];
  });
  const rest = method === "push-pull" ? [] : others.filter((way) => way.length > 0);
  return { ways: [first, ...rest], marks };
}

/** The columns that hold figures, in the order that they are asked for. */
export function numberColumns({ ways }: Layout): readonly number[] {
  return [...new Set(ways.flat().flatMap((value) => [value.at, ...columnsOf(value)]))];
}

/** The columns that hold positions or targets. */
export function placeColumns({ ways }: Layout): readonly number[] {
  return [...new Set(ways.flat().map(({ at }) => at))];
}

/** The columns of what is read at a place. */
export function columnsOf(value: ValueColumns): readonly number[] {
  if ("backlash" in value) return [value.backlash];
  if ("half" in value) return [value.half];
  return "reading" in value ? [value.reading] : [value.advancing, value.retracting];
}

/** Of the columns with a role, the most plainly headed. */
function columnsFor(headings: readonly Heading[], role: Role): readonly number[] {
  const inRole = headings.filter((heading) => heading.role === role);
  const plainest = inRole.reduce((least, { rank }) => Math.min(least, rank), Number.POSITIVE_INFINITY);
  return headings.flatMap((heading, column) =>
    heading.role === role && heading.rank === plainest ? [column] : [],
  );
}

function missingIn(headings: readonly Heading[]): string {
  return columnsFor(headings, "position").length === 0 && columnsFor(headings, "target").length === 0
    ? "no column holds the positions"
    : "no column holds the readings";
}

type Found = readonly ValueColumns[] | Unclear;

function backlashColumns(headings: readonly Heading[], method: Method | undefined): Found {
  const columns = columnsFor(headings, "backlash");
  if (columns.length === 0) return [];
  const hasDirection = headings.some(({ role }) => role === "direction");
  if (hasDirection && columns.some((column) => headings[column]?.rank !== 0)) {
    return {
      unclear: "with a direction beside it each reading is half of a pair, and the halves are not in one row",
      asks: "method",
    };
  }
  const words = new Set(columns.map((column) => headings[column]?.words));
  if (words.size > 1) return eitherOf(headings, columns, "backlash");
  if (areTheSameInTwoUnits(headings, columns)) return eitherOf(headings, columns, "backlash");
  const at = placeOf(headings, "position", method);
  return typeof at === "number" ? columns.map((backlash) => ({ at, backlash })) : at;
}

/** Not numbered as repeats are, and in different units: one quantity, written twice. */
function areTheSameInTwoUnits(headings: readonly Heading[], columns: readonly number[]): boolean {
  const given = columns.map((column) => headings[column]);
  if (given.some((heading) => heading?.repeat !== undefined || heading?.isSaid)) return false;
  return new Set(given.map((heading) => JSON.stringify(heading?.unit))).size > 1;
}

/** Advancing and retracting by the numbers of their repeats, else in the order of the file. */
function pairColumns(headings: readonly Heading[], method: Method | undefined): Found {
  const matched = matchedPairs(headings);
  if ("unclear" in matched) return matched;
  if (matched.length === 0) return method === undefined ? [] : halfColumns(headings, method);
  const at = placeOf(headings, "position", undefined);
  return typeof at === "number" ? matched.map((pair) => ({ at, ...pair })) : at;
}

type Pair = { readonly advancing: number; readonly retracting: number };

function matchedPairs(headings: readonly Heading[]): readonly Pair[] | Unclear {
  const repeatOf = (column: number): number => headings[column]?.repeat ?? 0;
  const inOrder = (role: Role): readonly number[] =>
    [...columnsFor(headings, role)].sort((a, b) => repeatOf(a) - repeatOf(b));
  const retracting = inOrder("retracting");
  const advancing = inOrder("advancing");
  if (advancing.length === 0 || retracting.length === 0) return [];
  const pairs = advancing.flatMap((column, index) => {
    const other = retracting[index];
    return other === undefined || repeatOf(other) !== repeatOf(column)
      ? []
      : [{ advancing: column, retracting: other }];
  });
  return pairs.length === Math.max(advancing.length, retracting.length)
    ? pairs
    : { unclear: "the columns of advancing and retracting do not pair up", asks: "columns" };
}

/** Pairs of which every row holds one half, with its direction. */
function halfColumns(headings: readonly Heading[], method: Method): Found {
  const [direction] = columnsFor(headings, "direction");
  if (!takesPairs(method) || direction === undefined) return [];
  const at = placeOf(headings, "position", method);
  const readings = readingsBeside(headings);
  if (typeof at !== "number") return at;
  return "unclear" in readings ? readings : readings.map((half) => ({ at, half, direction }));
}

/** The columns of what is read in the direction that stands beside it. */
function readingsBeside(headings: readonly Heading[]): readonly number[] | Unclear {
  const named = columnsFor(headings, "reading");
  const readings = named.length > 0 ? named : columnsFor(headings.map(asPositionRead), "backlash");
  const words = new Set(readings.map((column) => headings[column]?.words));
  return words.size > 1 ? eitherOf(headings, readings, "reading") : readings;
}

/** Positions read at targets: a row for each reading with its direction, or a column for each direction. */
function positioningColumns(headings: readonly Heading[], method: Method | undefined): Found {
  if (method === undefined && columnsFor(headings, "target").length === 0) return [];
  const at = placeOf(headings, "target", method);
  if (typeof at !== "number") return at;
  const runs = headings.flatMap((heading, column) => (countsRuns(heading) ? [column] : []));
  const run = runs[0];
  const directions = columnsFor(headings, "direction");
  if (directions.length === 0) {
    const pairs = matchedPairs(headings);
    if ("unclear" in pairs) return pairs;
    return pairs.flatMap(({ advancing, retracting }) => [
      { at, reading: advancing, direction: "advancing", run, repeat: headings[advancing]?.repeat },
      { at, reading: retracting, direction: "retracting", run, repeat: headings[retracting]?.repeat },
    ]);
  }
  const [direction = 0] = directions;
  const readings = readingsBeside(headings);
  if ("unclear" in readings) return readings;
  return readings.map((reading) => ({
    at,
    reading,
    direction,
    run,
    repeat: headings[reading]?.repeat,
  }));
}

/** What is plainly a lost motion, or counts the runs, is no position that was read. */
function asPositionRead(heading: Heading): Heading {
  const isOther = countsRuns(heading) || (heading.role === "backlash" && heading.rank === 0);
  return isOther ? { rank: 0, words: heading.words } : heading;
}

/** `run` counts runs; `run 2` holds the readings of the second. */
function countsRuns({ role, rank, repeat, words }: Heading): boolean {
  if (role === "run") return true;
  return role === "backlash" && rank === 2 && repeat === undefined && words !== "r";
}

/** The one column of places, which may be headed as target or as position where there is no other. */
function placeOf(
  headings: readonly Heading[],
  role: "position" | "target",
  method: Method | undefined,
): number | Unclear {
  const named = columnsFor(headings, role);
  const other = role === "position" ? "target" : "position";
  const mayBeOther = role === "position" || method === "positioning";
  const columns = named.length > 0 || !mayBeOther ? named : columnsFor(headings, other);
  const [only] = columns;
  if (only === undefined) return { unclear: "no column holds the positions", asks: "columns" };
  return columns.length === 1 ? only : eitherOf(headings, columns, "position");
}

function eitherOf(headings: readonly Heading[], columns: readonly number[], what: string): Unclear {
  const names = columns.map((column) => headings[column]?.words ?? "");
  const told =
    new Set(names).size === 1 ? `${columns.length} columns` : `the columns "${names.join('" and "')}"`;
  return { unclear: `${told} could each be the ${what}`, asks: "columns" };
}
