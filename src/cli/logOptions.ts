import { failed, type Outcome, succeeded } from "../inspection/problem.ts";
import { type ColumnSaid, ROLES } from "../intake/columnSaid.ts";
import type { DecimalMark } from "../intake/numberText.ts";
import type { Asks } from "../intake/question.ts";
import type { CsvOptions } from "../intake/understanding.ts";
import { type CommandLine, type OptionSpec, textOf } from "./command.ts";

/** Options that say how to read a log where it leaves that open. */
export const LOG_OPTIONS: readonly OptionSpec[] = [
  {
    name: "columns",
    value: "ROLE=COLUMN…",
    help: "of a log, as in position=1,backlash=3 (thou)",
  },
  { name: "decimal-mark", value: "point|comma", help: "before the decimals of a log" },
];

const MARKS: Readonly<Record<string, DecimalMark>> = { point: ".", comma: "," };

/** How to read a log, as far as the command line says; a problem where an option cannot be read. */
export function readLogOptions(line: CommandLine): Outcome<CsvOptions> {
  const columns = textOf(line, "columns");
  const named = columns === undefined ? succeeded(undefined) : readColumns(columns);
  if (!named.ok) return named;
  const mark = textOf(line, "decimal-mark");
  const decimalMark = mark === undefined ? undefined : MARKS[mark];
  if (mark !== undefined && decimalMark === undefined) {
    return failed("--decimal-mark", `"${mark}" is not one of its values`, "Write point or comma.");
  }
  return succeeded({ ...(named.value && { columns: named.value }), ...(decimalMark && { decimalMark }) });
}

/** The option that answers a question about a log, as an error message names it. */
export function optionFor(asks: Asks): string {
  switch (asks) {
    case "columns":
      return '--columns "position=COLUMN,backlash=COLUMN" (by heading or number, with a unit in brackets)';
    case "units":
      return "--units mm|in";
    case "method":
      return "--method indicator-pair|dial-pair|positioning";
    case "decimal mark":
      return "--decimal-mark point|comma";
  }
}

/** `position=1, backlash=Reading, left (thou)`: a comma separates where a role and an equals sign follow. */
function readColumns(text: string): Outcome<readonly ColumnSaid[]> {
  const roles = ROLES.join("|");
  const parts = text.split(new RegExp(`,(?=\\s*(?:${roles})\\s*=)`));
  const named: ColumnSaid[] = [];
  for (const part of parts) {
    const [, name, column = ""] = /^\s*([a-z]+)\s*=\s*(.+?)\s*$/s.exec(part) ?? [];
    const as = ROLES.find((role) => role === name);
    if (as === undefined) {
      return failed(
        "--columns",
        `"${part.trim()}" does not name a column`,
        `Write ROLE=COLUMN, such as position=1,backlash=3. The roles are ${ROLES.join(", ")}.`,
      );
    }
    named.push({ column, as });
  }
  return succeeded(named);
}
