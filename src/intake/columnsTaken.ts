import type { Heading } from "./heading.ts";
import { columnsOf } from "./layout.ts";
import type { Understanding } from "./understanding.ts";

/** What a column of a log was taken as, in words for the reader. */
export interface ColumnTaken {
  readonly header: string;
  /** `position`, `backlash 2`, `note` …, or `not used`. */
  readonly takenAs: string;
  readonly unit: string | undefined;
  readonly why: string;
}

/** Tells of every column what it was taken as and why. */
export function columnsTaken(headings: readonly Heading[], how: Understanding): readonly ColumnTaken[] {
  const roles = rolesTaken(how);
  return how.headings.map((header, column) => {
    const takenAs = roles.get(column);
    if (takenAs === undefined) {
      const known = headings[column]?.role !== undefined;
      const why = known ? "another column says it more plainly" : "its heading is none that is known";
      return { header, takenAs: "not used", unit: undefined, why };
    }
    const told = how.units.get(column);
    if (told === undefined) return { header, takenAs, unit: undefined, why: "its heading says so" };
    const unit = told.unit === "divisions" ? told.unit : told.unit?.name;
    return { header, takenAs, unit, why: `its heading says so; ${told.told}` };
  });
}

function rolesTaken({ layout }: Understanding): ReadonlyMap<number, string> {
  const { position, values } = layout;
  const repeats = values.length > 1;
  const readings = values.flatMap((value, index) => {
    const names = "backlash" in value ? ["backlash"] : ["advancing", "retracting"];
    return columnsOf(value).map((column, half) => {
      return [column, `${names[half]}${repeats ? ` ${index + 1}` : ""}`] as const;
    });
  });
  const marks = (["note", "time", "excluded"] as const).flatMap((mark) => {
    const column = layout[mark];
    return column === undefined ? [] : [[column, mark] as const];
  });
  return new Map([[position, "position"], ...readings, ...marks]);
}
