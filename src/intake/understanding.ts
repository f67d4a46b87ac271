import { failed, type Outcome, succeeded } from "../inspection/problem.ts";
import { type Method, takesPairs } from "../inspection/schema.ts";
import type { Units } from "../inspection/units.ts";
import { numberTextOf, readCell } from "./cell.ts";
import { chooseColumns } from "./columns.ts";
import { type DataLine, statedUnits, unitsWritten } from "./dataLines.ts";
import { columnsOf, type Layout, numberColumns } from "./layout.ts";
import type { LengthUnit } from "./lengthUnit.ts";
import { settleMethod, statedMethod } from "./method.ts";
import { type MarkEvidence, markEvidence } from "./numberText.ts";
import type { Table } from "./table.ts";
import { settleUnits, type UnitsFound, type UnitTold } from "./units.ts";

/** What the reader may say of a log. */
export interface CsvOptions {
  /** The unit of lengths that the log gives no unit for. */
  readonly units?: Units;
  readonly method?: Method;
}

/** How a table's cells are to be understood. */
export interface Understanding {
  readonly method: Method;
  readonly layout: Layout;
  /** The columns' headings as written. */
  readonly headings: readonly string[];
  /** For each column of numbers that is read. */
  readonly units: ReadonlyMap<number, UnitTold>;
  /** The unit that lengths are brought to; undefined where nothing tells any unit. */
  readonly target: Units | undefined;
  /** The unit of a length outside the columns that has none beside it. */
  readonly unlabelled: LengthUnit | undefined;
  readonly evidence: MarkEvidence;
}

/** Settles columns, method, decimal mark and units, from what the log and the caller say. */
export function understand(
  table: Table,
  said: readonly DataLine[],
  options: CsvOptions,
): Outcome<Understanding> {
  const stated = options.method === undefined ? statedMethod(said) : succeeded(options.method);
  if (!stated.ok) return stated;
  const chosen = chooseColumns(table, stated.value !== undefined && !takesPairs(stated.value));
  if (!chosen.ok) return chosen;
  const layout = chosen.value;
  const numbers = numberColumns(layout);
  const evidence = markEvidence(numbers.flatMap((column) => cellsOf(table, column).map(numberTextOf)));
  const found = new Map(numbers.map((column) => [column, unitsFound(table, column, evidence)]));
  const readings = layout.values.flatMap(columnsOf).flatMap((column) => found.get(column) ?? []);
  const method = settleMethod(stated.value, layout.values, readings);
  if (!method.ok) return failed(`line ${table.headingRow.line}`, method.problem.what, method.problem.cure);
  const inDivisions = method.value === "dial-pair" && layout.values.some((value) => "advancing" in value);
  const lengths = inDivisions ? [layout.position] : numbers;
  const settled = settleUnits(
    lengths.flatMap((column) => found.get(column) ?? []),
    unitsWritten(said),
    statedUnits(said),
    options.units,
  );
  const divisions: UnitTold = { unit: "divisions", told: "a dial is read in divisions" };
  return succeeded({
    method: method.value,
    layout,
    headings: table.headingRow.cells,
    units: new Map(numbers.map((column, index) => [column, settled.columns[index] ?? divisions])),
    target: settled.target,
    unlabelled: settled.unlabelled,
    evidence,
  });
}

function cellsOf({ data }: Table, column: number): readonly string[] {
  return data.map(({ cells }) => cells[column] ?? "");
}

/** The units that a column's heading and cells give. */
function unitsFound(table: Table, column: number, evidence: MarkEvidence): UnitsFound {
  const heading = table.headings[column]?.unit;
  const cells = cellsOf(table, column).map((text) => readCell(text, evidence));
  return {
    heading: heading !== undefined && heading !== "divisions" && "unknown" in heading ? undefined : heading,
    cells: new Set(cells.flatMap((cell) => (cell.kind === "number" ? (cell.unit ?? []) : []))),
  };
}
