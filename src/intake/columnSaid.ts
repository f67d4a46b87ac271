import { failed, type Outcome, succeeded } from "../inspection/problem.ts";
import { columnUnit, type Heading } from "./heading.ts";
import type { Role } from "./vocabulary.ts";

/** What the reader says of a column: it stands before what its heading says. */
export interface ColumnSaid {
  /** The column's number, counted from 1, or its heading. */
  readonly column: number | string;
  readonly as: Role | "nothing";
  /** The unit of its figures; that of the log where it is left out. */
  readonly unit?: string;
}

/** What may stand in a column, in the order that it is offered in. */
export const ROLES: readonly (Role | "nothing")[] = [
  "position",
  "backlash",
  "advancing",
  "retracting",
  "target",
  "direction",
  "reading",
  "run",
  "note",
  "time",
  "date",
  "excluded",
  "nothing",
];

const PLACES: ReadonlySet<Role> = new Set(["position", "target"]);
const READINGS: ReadonlySet<Role> = new Set(["backlash", "advancing", "retracting", "reading", "direction"]);

/** The headings, changed to what the reader says. A role that is said is taken from no other column. */
export function headingsAsSaid(
  headings: readonly Heading[],
  written: readonly string[],
  said: readonly ColumnSaid[],
): Outcome<readonly Heading[]> {
  const roles = new Set(said.map(({ as }) => as));
  const isSettled = ({ role }: Heading): boolean =>
    role !== undefined && (roles.has(role) || isAmong(PLACES, role, roles) || isAmong(READINGS, role, roles));
  const changed = headings.map((heading): Heading => (isSettled(heading) ? withoutRole(heading) : heading));
  const counts = new Map<Role, number>();
  for (const { column, as, unit } of said) {
    const index = indexOf(column, written);
    const heading = headings[index];
    if (heading === undefined) return noSuchColumn(column, written);
    const said = saidUnit(unit);
    if (!said.ok) return said;
    const { role: _found, ...kept } = heading;
    const repeat = as === "nothing" ? 0 : (counts.get(as) ?? 0) + 1;
    if (as !== "nothing") counts.set(as, repeat);
    changed[index] = {
      ...kept,
      ...(said.value && { unit: said.value }),
      ...(as !== "nothing" && { role: as, rank: 0, words: as, repeat }),
      isSaid: true,
    };
  }
  return succeeded(changed.map((heading) => withoutLoneRepeat(heading, counts)));
}

function isAmong(group: ReadonlySet<Role>, role: Role, said: ReadonlySet<Role | "nothing">): boolean {
  return group.has(role) && [...group].some((each) => said.has(each));
}

function withoutRole({ role: _role, ...heading }: Heading): Heading {
  return heading;
}

/** Only columns said to be the same are repeats, with numbers to tell them by. */
function withoutLoneRepeat(heading: Heading, counts: ReadonlyMap<Role, number>): Heading {
  if (!heading.isSaid || heading.role === undefined || counts.get(heading.role) !== 1) return heading;
  const { repeat: _only, ...single } = heading;
  return single;
}

function indexOf(column: number | string, written: readonly string[]): number {
  if (typeof column === "number") return column - 1;
  const plain = (text: string): string => text.replace(/\s+/g, " ").trim().toLowerCase();
  const found = written.findIndex((heading) => plain(heading) === plain(column));
  return found === -1 && /^\d+$/.test(column) ? Number(column) - 1 : found;
}

function saidUnit(unit: string | undefined): Outcome<Heading["unit"]> {
  if (unit === undefined) return succeeded(undefined);
  const found = columnUnit(unit.trim().toLowerCase());
  return found === undefined || (typeof found === "object" && "unknown" in found)
    ? failed("", `"${unit}" is no unit of a column`, "Use mm, µm, in, thou or div.")
    : succeeded(found);
}

function noSuchColumn(column: number | string, written: readonly string[]): Outcome<never> {
  const names = written.map((heading, index) => (heading === "" ? `${index + 1}` : `"${heading}"`));
  return failed(
    "",
    `there is no column ${column}`,
    `The columns are ${names.join(", ")}, or by number 1 to ${written.length}.`,
  );
}
