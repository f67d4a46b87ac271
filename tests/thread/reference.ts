import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { ThreadForm } from "../../src/thread/form.ts";
import { formNamed } from "../../src/thread/forms/index.ts";
import type { ThreadSize } from "../../src/thread/size.ts";

/** Rows of the reference, made by thread.R from the standards' formulas. */
export type Row = Readonly<Record<string, number>>;

export const REFERENCE: Readonly<Record<string, readonly Row[]>> = JSON.parse(
  readFileSync(join(import.meta.dirname, "../reference/thread.json"), "utf8"),
);

/** The rows of a table; throws where there is none. */
export function rowsOf(table: string): readonly Row[] {
  const rows = REFERENCE[table];
  if (rows === undefined) throw new Error(`The reference has no ${table}.`);
  return rows;
}

/** A value of a row; throws where there is none. */
export function cell(row: Row, key: string): number {
  const value = row[key];
  if (value === undefined) throw new Error(`The row has no ${key}.`);
  return value;
}

/** A form by its name; throws where there is none. */
export function form(name: string): ThreadForm {
  const found = formNamed(name);
  if (!found.ok) throw new Error(found.problem.what);
  return found.value;
}

/** A right-hand single-start thread in millimetres, unless said otherwise. */
export function metric(diameter: number, pitch: number, starts = 1): ThreadSize {
  return { diameter, pitch, starts, hand: "right" };
}

/** A right-hand single-start thread in inches and threads per inch. */
export function inch(diameter: number, perInch: number, starts = 1): ThreadSize {
  return { diameter: diameter * 25.4, pitch: 25.4 / perInch, starts, hand: "right" };
}
