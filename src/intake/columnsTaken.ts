import { columnsOf, type Layout } from "./layout.ts";
import type { Understanding } from "./understanding.ts";
import type { Role } from "./vocabulary.ts";

/** What a column of a log was taken as, for the reader to see and to change. */
export interface ColumnTaken {
  readonly header: string;
  readonly as: Role | "nothing";
  /** In words: `position`, `backlash 2`, `note` …, or `not used`. */
  readonly takenAs: string;
  readonly unit: string | undefined;
  /** Whether the reader gave the unit of this very column. */
  readonly isUnitSaid?: true;
  readonly why: string;
}

/** Tells of every column what it was taken as and why. */
export function columnsTaken(how: Understanding): readonly ColumnTaken[] {
  const roles = rolesTaken(how.layout);
  return how.written.map((header, column) => {
    const taken = roles.get(column);
    const heading = how.headings[column];
    if (taken === undefined) {
      return { header, as: "nothing", takenAs: "not used", unit: undefined, why: whyNot(heading) };
    }
    const { as, name } = taken;
    const why = whyTaken(heading?.isSaid === true, header);
    const told = how.units.get(column);
    if (told === undefined) return { header, as, takenAs: name, unit: undefined, why };
    const unit = told.unit === "divisions" ? told.unit : told.unit?.name;
    return {
      header,
      as,
      takenAs: name,
      unit,
      ...(told.isSaid && { isUnitSaid: true }),
      why: `${why}; ${told.told}`,
    };
  });
}

function whyTaken(isSaid: boolean, header: string): string {
  if (isSaid) return "you said so";
  return header === "" ? "it goes on with the column beside it" : "its heading says so";
}

function whyNot(heading: Understanding["headings"][number] | undefined): string {
  if (heading?.isSaid) return "you said so";
  return heading?.role === undefined
    ? "its heading is none that is known"
    : "another column says it more plainly";
}

interface Taken {
  readonly as: Role;
  readonly name: string;
}

function rolesTaken({ ways, marks }: Layout): ReadonlyMap<number, Taken> {
  const taken = new Map<number, Taken>();
  const take = (column: number, as: Role, number = ""): void => {
    if (!taken.has(column)) taken.set(column, { as, name: `${as}${number}` });
  };
  for (const way of ways) {
    way.forEach((value, index) => {
      const number = way.length > 1 ? ` ${index + 1}` : "";
      take(value.at, "reading" in value ? "target" : "position");
      const read = columnsOf(value);
      if ("backlash" in value) take(read[0] ?? 0, "backlash", number);
      else if ("half" in value) {
        take(value.half, "reading", number);
        take(value.direction, "direction");
      } else if ("advancing" in value) {
        take(value.advancing, "advancing", number);
        take(value.retracting, "retracting", number);
      } else {
        const { direction, run, repeat } = value;
        const count = repeat === undefined ? "" : ` ${repeat}`;
        take(value.reading, typeof direction === "string" ? direction : "reading", count);
        if (typeof direction === "number") take(direction, "direction");
        if (run !== undefined) take(run, "run");
      }
    });
  }
  for (const { name, column } of marks) take(column, name);
  return taken;
}
