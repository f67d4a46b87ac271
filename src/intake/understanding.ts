import { failed, type Outcome, succeeded } from "../inspection/problem.ts";
import type { Method } from "../inspection/schema.ts";
import type { Units } from "../inspection/units.ts";
import type { ColumnSaid } from "./columnSaid.ts";
import { type Columns, chooseColumns } from "./columns.ts";
import { isBlank } from "./cutting/rows.ts";
import { type DataLine, statedUnits, unitsWritten } from "./dataLines.ts";
import type { Heading } from "./heading.ts";
import { columnsOf, type Layout, numberColumns, placeColumns } from "./layout.ts";
import type { LengthUnit } from "./lengthUnit.ts";
import { settleMethod, statedMethod } from "./method.ts";
import type { DecimalMark, MarkEvidence } from "./numberText.ts";
import { asking, type Unsettled } from "./question.ts";
import type { Seen } from "./seenCells.ts";
import type { Table } from "./tableParts.ts";
import { settleUnits, type UnitsFound, type UnitTold } from "./units.ts";

/** What the reader may say of a log; each stands before what the log says, but for its units. */
export interface CsvOptions {
  /** The unit of lengths that the log gives no unit for. */
  readonly units?: Units;
  readonly method?: Method;
  readonly decimalMark?: DecimalMark;
  readonly columns?: readonly ColumnSaid[];
}

/** How a table's cells are to be understood. */
export interface Understanding {
  readonly method: Method;
  readonly layout: Layout;
  readonly headings: readonly Heading[];
  /** The columns' headings as written. */
  readonly written: readonly string[];
  /** For each column of numbers that is read. */
  readonly units: ReadonlyMap<number, UnitTold>;
  /** The unit that lengths are brought to; undefined where nothing tells any unit. */
  readonly target: Units | undefined;
  /** The unit of a length outside the columns that has none beside it. */
  readonly unlabelled: LengthUnit | undefined;
  readonly evidence: MarkEvidence;
  /** Whether every row must have all its cells, as an empty one would not show. */
  readonly needsEveryCell: boolean;
}

/** Which columns of a log are read, before their cells are. */
export interface Chosen extends Columns {
  /** The method that the log or the caller gives. */
  readonly stated: Method | undefined;
}

/** Chooses the columns from what the log and the caller say. */
export function choose(
  table: Table,
  lines: readonly DataLine[],
  options: CsvOptions,
): Outcome<Chosen> | Unsettled {
  const stated = options.method === undefined ? statedMethod(lines) : succeeded(options.method);
  if (!stated.ok) return stated;
  const chosen = chooseColumns(table, stated.value, options.columns ?? []);
  return chosen.ok ? succeeded({ ...chosen.value, stated: stated.value }) : chosen;
}

/** Settles method, decimal mark and units, from what the log, its cells and the caller say. */
export function understand(
  table: Table,
  lines: readonly DataLine[],
  options: CsvOptions,
  { stated, layout, headings }: Chosen,
  seen: Seen,
): Outcome<Understanding> | Unsettled {
  const found = new Map(
    numberColumns(layout).map((column) => [column, unitsFound(headings[column], column, seen)]),
  );
  const settled = settleMethod(stated, layout, found);
  if (!settled.ok) {
    const { what, cure } = settled.problem;
    return failed(`line ${table.headingRow?.line ?? 1}`, what, cure);
  }
  const method = settled.value;
  const lengths = lengthColumns(layout, method);
  const units = settleUnits(
    lengths.flatMap((column) => found.get(column) ?? []),
    unitsWritten(lines),
    statedUnits(lines),
    options.units,
  );
  const divisions: UnitTold = { unit: "divisions", told: "a dial is read in divisions" };
  const byColumn = new Map(lengths.map((column, index) => [column, units.columns[index]]));
  const told = new Map(numberColumns(layout).map((column) => [column, byColumn.get(column) ?? divisions]));
  const inTenths = [...told].find(([, { unit }]) => isTenths(unit));
  if (inTenths !== undefined && units.target === "mm") return tenthsInMillimetres(table, inTenths[0]);
  return succeeded({
    method,
    layout,
    headings,
    written: table.written,
    units: told,
    target: units.target,
    unlabelled: units.unlabelled,
    evidence: options.decimalMark ?? seen.evidence,
    needsEveryCell: isBlank(table.separator),
  });
}

/** All columns of figures but those of a dial, the places first. */
function lengthColumns(layout: Layout, method: Method): readonly number[] {
  const inDivisions = layout.ways
    .flat()
    .flatMap((value) => (method === "dial-pair" && !("backlash" in value) ? columnsOf(value) : []));
  const places = placeColumns(layout);
  const others = numberColumns(layout).filter((column) => !places.includes(column));
  return [...places, ...others.filter((column) => !inDivisions.includes(column))];
}

/** The units that a column's heading and cells give. */
function unitsFound(heading: Heading | undefined, column: number, seen: Seen): UnitsFound {
  const unit = heading?.unit;
  return {
    heading: unit !== undefined && unit !== "divisions" && "unknown" in unit ? undefined : unit,
    isSaid: heading?.isUnitSaid === true,
    cells: seen.units.get(column) ?? new Set(),
  };
}

/** Tenths are of a thousandth of an inch; beside millimetres they may be meant as something else. */
export function isTenths(unit: LengthUnit | "divisions" | undefined): boolean {
  return unit !== undefined && unit !== "divisions" && unit.name === "tenths";
}

export const TENTHS = "tenths are of a thousandth of an inch, and the other lengths are in millimetres";

function tenthsInMillimetres(table: Table, column: number): Outcome<never> | Unsettled {
  const heading = table.written[column] ?? "";
  return asking(
    "columns",
    failed(
      `line ${table.headingRow?.line ?? 1}`,
      `"${heading}": ${TENTHS}`,
      "Give the unit of the column as µm, mm or thou.",
    ),
  );
}
