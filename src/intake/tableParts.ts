import type { Row, Separator } from "./cutting/rows.ts";
import type { Heading } from "./heading.ts";

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
  /** The line after which rows of data begin; 0 if the first line may be one. */
  readonly headingsEnd: number;
  /** The first rows of data. */
  readonly sample: readonly Row[];
  /** Whether the headings name what is needed. */
  readonly isHeaded: boolean;
}
