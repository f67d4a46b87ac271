import { failed, type Outcome, succeeded } from "../inspection/problem.ts";
import { columnUnit, type Heading } from "./heading.ts";
import type { Role } from "./vocabulary.ts";

/** What the reader says of a column: it stands before what its heading says. */
export interface ColumnSaid {
  /** The column's number, counted from 1, or its heading; its unit may stand behind it: `Reading (thou)`, `2 (in)`. */
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
    const found = columnMeant(column, written);
    const heading = found === undefined ? undefined : headings[found.index];
    if (found === undefined || heading === undefined) return noSuchColumn(column, written);
    const given = unitGiven(unit ?? found.unit);
    if (!given.ok) return given;
    const { role: _found, ...kept } = heading;
    const repeat = as === "nothing" ? 0 : (counts.get(as) ?? 0) + 1;
    if (as !== "nothing") counts.set(as, repeat);
    changed[found.index] = {
      ...kept,
      ...(given.value && { unit: given.value, isUnitSaid: true }),
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

/** The column that is meant by a number or a heading, and the unit behind it where that is not its heading's own. */
function columnMeant(
  column: number | string,
  written: readonly string[],
): { readonly index: number; readonly unit?: string } | undefined {
  if (typeof column === "number") return { index: column - 1 };
  const whole = indexOf(column, written);
  if (whole !== undefined) return { index: whole };
  const [, name, unit] = /^(.*?)\s*\(([^()]+)\)$/.exec(column.trim()) ?? [];
  if (name === undefined || unit === undefined) return undefined;
  const withoutUnits = written.map((heading) => heading.replace(/\s*[([][^()[\]]*[)\]]\s*$/, ""));
  const index = indexOf(name, written) ?? indexOf(name, withoutUnits);
  return index === undefined ? undefined : { index, unit };
}

function indexOf(name: string, headings: readonly string[]): number | undefined {
  const plain = (text: string): string => text.replace(/\s+/g, " ").trim().toLowerCase();
  const found = headings.findIndex((heading) => plain(heading) === plain(name));
  if (found !== -1) return found;
  return /^\d+$/.test(name.trim()) ? Number(name) - 1 : undefined;
}

function unitGiven(unit: string | undefined): Outcome<Heading["unit"]> {
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
