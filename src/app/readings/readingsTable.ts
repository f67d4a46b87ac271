import { html, LitElement, nothing, type PropertyValues } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { repeat } from "lit/directives/repeat.js";
import type { Survey } from "../../inspection/schema.ts";
import type { Units } from "../../inspection/units.ts";
import { awaitsReading } from "../../records/record.ts";
import { capitalised } from "../../report/words.ts";
import { type Column, type ColumnName, columnsOf } from "../editing/columns.ts";
import type { Desk } from "../editing/desk.ts";
import { blankRow, type CellProblem, type Row, type RowReading, readRow } from "../editing/rows.ts";
import type { Log } from "../opening/readFile.ts";
import { notify } from "../shell/notice.ts";
import { controls } from "../style/controls.ts";
import { moveFor } from "./moves.ts";
import { readingRow, rowName } from "./readingRow.ts";
import { tableStyle } from "./tableStyle.ts";

declare global {
  interface HTMLElementEventMap {
    /** A table that was pasted into a cell. */
    "tightspot-pasted": CustomEvent<Log>;
  }
}

interface Cell {
  readonly row: number;
  readonly column: ColumnName;
}

/** The readings of a survey, to be typed with the keyboard alone. */
@customElement("tightspot-readings-table")
export class ReadingsTable extends LitElement {
  static override styles = [controls, tableStyle];

  @property({ attribute: false }) desk: Desk | null = null;
  @property({ attribute: false }) survey: Survey | null = null;
  @property({ attribute: false }) rows: readonly Row[] = [];
  @property() units: Units = "mm";
  /** Readings that a check names, 0-based in file order. */
  @property({ attribute: false }) doubtful: ReadonlySet<number> = new Set();

  /** The cell being typed in: what is wrong with it is said when it is left. */
  @state() private active: Cell | null = null;
  /** The row whose actions are shown. */
  @state() private open: number | null = null;

  /** The empty row at the end; it becomes the next reading when something is typed into it. */
  #next = blankRow();

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has("rows") && this.rows.some(({ key }) => key === this.#next.key)) this.#next = blankRow();
  }

  protected override updated(changed: PropertyValues<this>): void {
    const isOther = changed.has("survey") && changed.get("survey")?.id !== this.survey?.id;
    if (isOther && this.rows.length === 0) this.#focusOn(this.#next, "input");
  }

  override render() {
    const { survey } = this;
    if (survey === null) return nothing;
    const columns = columnsOf(survey, this.units);
    let count = 0;
    return html`
      <table @focusin=${this.#onFocus} @focusout=${this.#onLeave} @keydown=${this.#onKey} @paste=${this.#onPaste}>
        <caption class="unseen">
          Readings; Enter goes on to the next cell
        </caption>
        <thead>
          <tr>
            <th scope="col"><span class="unseen">Reading</span></th>
            ${columns.map((column) => html`<th scope="col" class=${column.name}>${column.label} ${this.#unitOf(column)}</th>`)}
          </tr>
        </thead>
        ${repeat(
          [...this.rows, this.#next],
          ({ key }) => key,
          (row) => {
            const read = readRow(row, survey, this.units);
            return this.#row(row, read, read.state === "read" ? count++ : null, columns);
          },
        )}
      </table>
    `;
  }

  /** Puts the cursor on a reading, counted as in the file. */
  async focusReading(index: number): Promise<void> {
    await this.updateComplete;
    this.renderRoot.querySelector<HTMLInputElement>(`[data-reading="${index}"] input`)?.focus();
  }

  #unitOf({ counts }: Column) {
    if (counts === "plain") return nothing;
    return html`<span class="unit">${counts === "divisions" ? "div." : counts}</span>`;
  }

  #row(row: Row, read: RowReading, reading: number | null, columns: readonly Column[]) {
    return readingRow({
      row,
      columns,
      reading,
      problems: read.state === "unread" ? this.#shownProblems(row, read.problems) : [],
      isNext: row.key === this.#next.key,
      isDoubtful: reading !== null && this.doubtful.has(reading),
      isOpen: this.open === row.key,
      typed: (column, input) => this.#typed(row, column, input),
      toggled: () => this.#toggle(row),
      struck: (why) => this.#closeAfter(row, () => this.desk?.strike(row.key, why)),
      unstruck: () => this.#closeAfter(row, () => this.desk?.unstrike(row.key)),
      deleted: () => this.#delete(row, reading),
    });
  }

  /** Nothing is called missing in the row being typed or waiting, nor unreadable in the cell being typed. */
  #shownProblems(row: Row, problems: readonly CellProblem[]): readonly CellProblem[] {
    const { active } = this;
    if (active?.row !== row.key) {
      return awaitsReading(row) ? problems.filter(({ kind }) => kind === "unreadable") : problems;
    }
    return problems.filter(({ kind, column }) => kind === "unreadable" && column !== active.column);
  }

  #typed(row: Row, column: ColumnName, input: HTMLInputElement): void {
    const { desk } = this;
    if (desk === null) return;
    const text = input.value === '"' ? this.#above(row, column) : input.value;
    if (row.key !== this.#next.key) desk.enterCell(row.key, column, text);
    else if (text !== "") desk.setRows([...this.rows, { ...row, cells: { [column]: text } }]);
    // A ditto mark over an empty column changes nothing, and would otherwise stay.
    this.requestUpdate();
  }

  /** What a ditto mark stands for. */
  #above(row: Row, column: ColumnName): string {
    const at = this.rows.findIndex(({ key }) => key === row.key);
    return this.rows.at(at === -1 ? -1 : at - 1)?.cells[column] ?? "";
  }

  #onFocus({ target }: FocusEvent): void {
    const { row, column } = target instanceof HTMLInputElement ? target.dataset : {};
    this.active = row === undefined ? null : { row: Number(row), column: column as ColumnName };
  }

  #onLeave(): void {
    this.active = null;
  }

  #onKey(event: KeyboardEvent): void {
    const inputs = [...this.renderRoot.querySelectorAll<HTMLInputElement>("[data-column]")];
    const columns = this.survey === null ? 1 : columnsOf(this.survey, this.units).length;
    const to = moveFor(event, inputs, columns);
    if (to === null) return;
    event.preventDefault();
    to.focus();
    to.select();
  }

  #onPaste(event: ClipboardEvent): void {
    const text = event.clipboardData?.getData("text/plain").trim() ?? "";
    if (this.survey === null || !/[\t\n]/.test(text)) return;
    event.preventDefault();
    const [first = ""] = text.split("\n");
    const headings = columnsOf(this.survey, this.units).map(({ name }) => name);
    const content = /\p{L}{3}/u.test(first) ? text : `${headings.join("\t")}\n${text}`;
    const log: Log = { kind: "log", name: "What was pasted", content, units: this.units };
    this.dispatchEvent(new CustomEvent("tightspot-pasted", { detail: log, bubbles: true, composed: true }));
  }

  /** The cursor goes back to the row's button when its actions are closed. */
  #toggle(row: Row): void {
    this.open = this.open === row.key ? null : row.key;
    if (this.open === null) this.#focusOn(row, "button");
  }

  #closeAfter(row: Row, act: () => void): void {
    act();
    this.#toggle(row);
  }

  #delete(row: Row, reading: number | null): void {
    const after = this.rows[this.rows.indexOf(row) + 1] ?? this.#next;
    const undo = this.desk?.deleteRow(row.key);
    this.open = null;
    this.#focusOn(after, "input");
    if (undo === undefined) return;
    const text = `${capitalised(rowName({ row, isNext: false, reading }))} was deleted.`;
    notify(this, { tone: "done", text, action: { label: "Undo", act: undo } });
  }

  async #focusOn({ key }: Row, what: "input" | "button"): Promise<void> {
    await this.updateComplete;
    this.renderRoot.querySelector<HTMLElement>(`[data-key="${key}"] ${what}`)?.focus();
  }
}
