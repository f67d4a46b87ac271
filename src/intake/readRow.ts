import type { Reading } from "../inspection/schema.ts";
import { readCell, shown } from "./cell.ts";
import { dataLineOf } from "./dataLines.ts";
import type { Layout, ValueColumns } from "./layout.ts";
import { convertLength, plainUnit } from "./lengthUnit.ts";
import { type Refusal, refusal } from "./refusal.ts";
import type { Row } from "./rows.ts";
import type { Understanding } from "./understanding.ts";

export interface RowRead {
  readonly readings: readonly Reading[];
  readonly refused: readonly Refusal[];
}

type Value = { readonly value: number } | { readonly fault: string; readonly cure: string } | "empty";

/** Reads a row: its reading, or one for each repeat, and a refusal for each cell that gives none but should. */
export function readRow(row: Row, how: Understanding): RowRead {
  const refuse = (reason: string, cure: string): RowRead => ({
    readings: [],
    refused: [refusal(row, reason, cure)],
  });
  if (row.cells.slice(how.headings.length).some((cell) => cell !== "")) {
    return refuse(
      `there are more cells than the ${how.headings.length} columns`,
      "Where commas are decimal, separate the columns with semicolons; put a note with commas in quotes.",
    );
  }
  if (dataLineOf(row) !== undefined) {
    return refuse("it says something of the slide or survey", "Move it above the headings.");
  }
  const position = valueIn(row, how.layout.position, how);
  if (position === "empty") {
    return refuse(`"${nameOf(how.layout.position, how)}" is empty`, "Write the position on every row.");
  }
  if ("fault" in position) return refuse(position.fault, position.cure);
  const marks = marksIn(row, how.layout);
  const readings: Reading[] = [];
  const refused: Refusal[] = [];
  for (const columns of how.layout.values) {
    const values = valuesIn(row, columns, how);
    if (values === "empty") continue;
    if ("fault" in values) refused.push(refusal(row, values.fault, values.cure));
    else readings.push({ position: position.value, ...values, ...marks });
  }
  return readings.length === 0 && refused.length === 0
    ? refuse("it has a position but no reading", "Write the reading, or take the row out.")
    : { readings, refused };
}

type Values = { readonly backlash: number } | { readonly advancing: number; readonly retracting: number };

/** What one repeat holds. A pair of which one half is missing is a fault; a repeat left out altogether is not. */
function valuesIn(
  row: Row,
  columns: ValueColumns,
  how: Understanding,
): Values | Extract<Value, { fault: string }> | "empty" {
  if ("backlash" in columns) {
    const backlash = valueIn(row, columns.backlash, how);
    return backlash === "empty" || "fault" in backlash ? backlash : { backlash: backlash.value };
  }
  const advancing = valueIn(row, columns.advancing, how);
  const retracting = valueIn(row, columns.retracting, how);
  if (advancing === "empty" && retracting === "empty") return "empty";
  if (advancing === "empty" || retracting === "empty") {
    const missing = advancing === "empty" ? columns.advancing : columns.retracting;
    return {
      fault: `"${nameOf(missing, how)}" is empty beside its other half`,
      cure: "Write both readings of the pair, or neither.",
    };
  }
  if ("fault" in advancing) return advancing;
  return "fault" in retracting ? retracting : { advancing: advancing.value, retracting: retracting.value };
}

function valueIn(row: Row, column: number, how: Understanding): Value {
  const name = nameOf(column, how);
  const cell = readCell(row.cells[column] ?? "", how.evidence);
  if (cell.kind === "empty") return "empty";
  if (cell.kind === "fault") return { fault: `"${name}" ${cell.fault}`, cure: cell.cure };
  const columnUnit = how.units.get(column)?.unit;
  const unit = cell.unit ?? columnUnit;
  if (columnUnit === "divisions" || unit === "divisions") {
    return unit === columnUnit
      ? { value: cell.value }
      : {
          fault: `"${name}" is not in the unit of its column`,
          cure: "Give all readings in one kind of unit.",
        };
  }
  if (unit === undefined && how.target !== undefined) {
    return {
      fault: `"${name}" has no unit, where others have different ones`,
      cure: "Write its unit beside it.",
    };
  }
  return { value: unit && how.target ? convertLength(cell.value, unit, plainUnit(how.target)) : cell.value };
}

function nameOf(column: number, how: Understanding): string {
  return shown(how.headings[column] ?? "");
}

function marksIn(row: Row, layout: Layout): Pick<Reading, "note" | "time" | "excluded"> {
  const marks = (["time", "note", "excluded"] as const).flatMap((mark) => {
    const column = layout[mark];
    const text = column === undefined ? "" : (row.cells[column] ?? "");
    return text === "" ? [] : [[mark, text] as const];
  });
  return Object.fromEntries(marks);
}
