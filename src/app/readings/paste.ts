import type { Units } from "../../inspection/units.ts";
import type { ColumnName } from "../editing/columns.ts";
import type { Desk } from "../editing/desk.ts";
import type { Row } from "../editing/rows.ts";
import type { Log } from "../opening/readFile.ts";
import { notify } from "../shell/notice.ts";
import { PASTED } from "../shell/pastes.ts";

declare global {
  interface HTMLElementEventMap {
    /** A table with headings that was pasted into a cell. */
    "tightspot-pasted": CustomEvent<Log>;
  }
}

/** Where a paste goes: the cell, and the table about it. */
export interface PasteInto {
  readonly desk: Desk;
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
  const { desk, shown, at, column, columns, units } = into;
  const { blockOf, withBlock } = await import("./pasting.ts");
  const block = blockOf(text);
  const onward = columns.slice(columns.indexOf(column));
  const rows = block === null ? null : withBlock(desk.rows, shown, block, at, onward);
  if (block === null || rows === null) {
    const content = block === null ? text : `${columns.join("\t")}\n${text}`;
    const log: Log = { kind: "log", name: PASTED, content, units };
    from.dispatchEvent(new CustomEvent("tightspot-pasted", { detail: log, bubbles: true, composed: true }));
    return;
  }
  desk.setRows(rows);
  const count = block.length === 1 ? "One row was" : `${block.length} rows were`;
  notify(from, { tone: "done", text: `${count} pasted.`, action: { label: "Undo", act: () => desk.undo() } });
}
