import { isNoteText } from "./marks.ts";
import type { DecimalMark } from "./numberText.ts";
import type { Refusal } from "./refusal.ts";
import { textWritten } from "./textCell.ts";
import { csvText } from "./writeCsv.ts";

/** The rows and cells that could not be read, as CSV: their lines in the log, why, what to do, and what stands there. */
export function refusedCsv(refused: readonly Refusal[], mark: DecimalMark): string {
  const text = (value: string): string => textWritten(value, isNoteText);
  return csvText(
    [
      ["line", "reason", "cure", "text"],
      ...refused.map(({ row, reason, cure, ...refusal }) => [
        `${row}`,
        text(reason),
        text(cure),
        text(refusal.text),
      ]),
    ],
    mark,
  );
}
