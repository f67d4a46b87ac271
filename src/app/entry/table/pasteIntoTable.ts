import type { Units } from "../../../inspection/units.ts";
import type { ColumnName } from "../../editing/columns.ts";
import type { InspectionEditor } from "../../editing/inspectionEditor.ts";
import type { Row } from "../../editing/rows.ts";
import { PASTED } from "../../files/incomingFiles.ts";
import type { Log } from "../../files/readFile.ts";
import { notify } from "../../ui/notice.ts";

declare global {
  interface HTMLElementEventMap {
    /** A table with headings that was pasted into a cell. */
    "tightspot-pasted": CustomEvent<Log>;
  }
}

/** Where a paste goes: the cell, and the table about it. */
export interface PasteInto {
  readonly editor: InspectionEditor;
  /** The rows as they are looked at. */
  readonly shown: readonly Row[];
  readonly at: number;
  readonly column: ColumnName;
  readonly columns: readonly ColumnName[];
  readonly units: Units;
}

/**
 * Takes in what was pasted into a cell: a block of figures goes over the cells from there on, as in a spreadsheet;
 * a table with headings, or one wider than the columns, is read as a log.
 */
export async function paste(from: EventTarget, text: string, into: PasteInto): Promise<void> {
  const { editor, shown, at, column, columns, units } = into;
  const { blockOf, withBlock } = await import("./pastedBlock.ts");
  const block = blockOf(text);
  const onward = columns.slice(columns.indexOf(column));
  const rows = block === null ? null : withBlock(editor.rows, shown, block, at, onward);
  if (block === null || rows === null) {
    const content = block === null ? text : `${columns.join("\t")}\n${text}`;
    const log: Log = { kind: "log", name: PASTED, content, units };
    from.dispatchEvent(new CustomEvent("tightspot-pasted", { detail: log, bubbles: true, composed: true }));
    return;
  }
  editor.setRows(rows);
  const count = block.length === 1 ? "One row was" : `${block.length} rows were`;
  notify(from, {
    tone: "done",
    text: `${count} pasted.`,
    action: { label: "Undo", act: () => editor.undo() },
  });
}
