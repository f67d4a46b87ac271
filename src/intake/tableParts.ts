import type { Separator } from "./cut.ts";
import type { Heading } from "./heading.ts";
import type { Cursor, PlacedRow, Row } from "./rows.ts";

/** A log cut into its parts. Blank lines, comments and rules among them are left out. */
export interface Table {
  readonly text: string;
  readonly separator: Separator;
  /** Titles and data lines above the headings. */
  readonly above: readonly Row[];
  /** The row of headings; undefined where the log has none. */
  readonly headingRow: Row | undefined;
  /** The headings as written, a number for a column that has none. */
  readonly written: readonly string[];
  readonly headings: readonly Heading[];
  /** Where the rows of data begin. */
  readonly dataFrom: Cursor;
  /** The first rows of data. */
  readonly sample: readonly PlacedRow[];
  /** Whether the headings name what is needed. */
  readonly isHeaded: boolean;
}
