import { type Outcome, succeeded } from "../inspection/problem.ts";
import { decodeText } from "./decode.ts";
import { findTable } from "./table.ts";
import type { Role } from "./vocabulary.ts";

/** The beginning of a log, cut into columns: what a person needs to see to say what they hold. */
export interface Preview {
  readonly columns: readonly {
    /** Its heading as written; its number where there are no headings. */
    readonly heading: string;
    /** What its heading alone would be taken for. */
    readonly as: Role | "nothing";
    /** Its first cells. */
    readonly cells: readonly string[];
  }[];
}

/** So many rows show what a column holds. */
const ROWS_SHOWN = 3;

/** Cuts a log into columns, to be shown. Fails where there is no table in it. */
export function previewOf(source: Uint8Array | string): Outcome<Preview> {
  const text = decodeText(source);
  const table = text.ok ? findTable(text.value) : text;
  if (!table.ok) return table;
  const { written, headings, sample } = table.value;
  return succeeded({
    columns: written.map((heading, column) => ({
      heading,
      as: headings[column]?.role ?? "nothing",
      cells: sample.slice(0, ROWS_SHOWN).map(({ cells }) => cells[column] ?? ""),
    })),
  });
}
