import { html, LitElement, nothing, type PropertyValues, unsafeCSS } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { guard } from "lit/directives/guard.js";
import { repeat } from "lit/directives/repeat.js";
import type { Slide, Survey } from "../../../inspection/schema.ts";
import { awaitsReading } from "../../../records/editorState.ts";
import { capitalised } from "../../../report/words.ts";
import { type Column, type ColumnName, columnsOf } from "../../editing/columns.ts";
import type { InspectionEditor } from "../../editing/inspectionEditor.ts";
import {
  blankRow,
  type CellProblem,
  type Row,
  type RowResult,
  readRow,
  rowReader,
} from "../../editing/rows.ts";
import { DeferredRender } from "../../ui/deferredRender.ts";
import { notify } from "../../ui/notice.ts";
import { controls } from "../../ui/sharedStyles.ts";
import { SlipMarks } from "./entryWarningMarks.ts";
import { type PasteInto, paste } from "./pasteIntoTable.ts";
import { type RowView, readingRow, rowName } from "./readingRow.ts";
import readingsTableCss from "./readingsTable.css?inline";
import { inView, type Sorting, sortedNext } from "./sorting.ts";
import { type ActiveCell, goTo, onTableKey } from "./tableKeys.ts";

/** So many rows are there at first. */
const FIRST = 12;

/** The readings of a survey, to be typed with the keyboard alone. */
@customElement("tightspot-readings-table")
export class ReadingsTable extends LitElement {
  static override styles = [controls, unsafeCSS(readingsTableCss)];

  @property({ attribute: false }) editor: InspectionEditor | null = null;
  @property({ attribute: false }) slide: Slide | null = null;
  @property({ attribute: false }) survey: Survey | null = null;
  @property({ attribute: false }) rows: readonly Row[] = [];
  /** Readings that a check names, 0-based in file order. */
  @property({ attribute: false }) doubtful: ReadonlySet<number> = new Set();

  /** The cell being typed in: what is wrong with it is said when it is left. */
  @state() private active: ActiveCell | null = null;
  /** The row whose actions are shown. */
  @state() private open: number | null = null;
  @state() private sorting: Sorting | null = null;

  readonly #slips = new SlipMarks(this);
  readonly #stages = new DeferredRender(this, 1);

  /** The empty row at the end; it becomes the next reading when something is typed into it. */
  #next = blankRow();

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has("rows") && this.rows.some(({ key }) => key === this.#next.key)) this.#next = blankRow();
    if (changed.get("survey")?.id !== this.survey?.id)
      this.sorting = changed.has("survey") ? null : this.sorting;
  }

  protected override updated(changed: PropertyValues<this>): void {
    const isOther = changed.has("survey") && changed.get("survey")?.id !== this.survey?.id;
    if (isOther && this.rows.length === 0) this.#focusOn(this.#next, "input");
  }

  override render() {
    const { survey, slide } = this;
    if (survey === null || slide === null) return nothing;
    const columns = columnsOf(survey, slide.units);
    let count = 0;
    const readOf = rowReader(survey, slide.units);
    const read = new Map(
      [...this.rows, this.#next].map((row) => {
        const reading = readOf(row);
        return [row.key, { reading, index: reading.state === "read" ? count++ : null }] as const;
      }),
    );
    return html`
      <table
        @focusin=${this.#onFocus}
        @focusout=${this.#onLeave}
        @keydown=${this.#onKey}
        @paste=${this.#onPaste}
      >
        <caption class="unseen">
          Readings; Enter goes on to the next cell
        </caption>
        <thead>
          <tr>
            <th scope="col"><span class="unseen">Reading</span></th>
            ${columns.map((column) => this.#heading(column))}
          </tr>
        </thead>
        ${repeat(
          [...this.#shown, this.#next].slice(0, this.#stages.isComplete ? undefined : FIRST),
          ({ key }) => key,
          (row) => {
            const { reading, index } = read.get(row.key) ?? {
              reading: { state: "blank" } as const,
              index: null,
            };
            return this.#row(row, reading, index, columns);
          },
        )}
      </table>
      ${
        this.sorting === null
          ? nothing
          : html`<p class="order screen-only">
              Sorted to look at; the file keeps the order of reading.
              <button type="button" class="quiet" @click=${() => this.#unsort()}>Order of reading</button>
            </p>`
      }
    `;
  }

  /** Puts the cursor on a reading, counted as in the file. */
  async focusReading(index: number): Promise<void> {
    this.#stages.finish();
    await this.updateComplete;
    this.renderRoot.querySelector<HTMLInputElement>(`[data-reading="${index}"] input`)?.focus();
  }

  /** Takes a value from a gauge as if it were typed where the cursor is, or else into the next reading. */
  async takeValue(text: string): Promise<void> {
    if (!this.#stages.isComplete) {
      this.#stages.finish();
      await this.updateComplete;
    }
    const cells = [...this.renderRoot.querySelectorAll<HTMLInputElement>("[data-column]")];
    const { active } = this;
    const isActive = ({ dataset }: HTMLInputElement): boolean =>
      Number(dataset.row) === active?.row && dataset.column === active.column;
    const at = active === null ? -1 : cells.findIndex(isActive);
    const cell = cells.at(at === -1 ? -this.#columns.length : at);
    const row = [...this.rows, this.#next].find(({ key }) => key === Number(cell?.dataset.row));
    if (cell === undefined || row === undefined) return;
    cell.value = text;
    this.#typed(row, cell.dataset.column as ColumnName, cell);
    goTo(cells[cells.indexOf(cell) + 1] ?? cell);
  }

  get #columns(): readonly Column[] {
    const { survey, slide } = this;
    return survey === null || slide === null ? [] : columnsOf(survey, slide.units);
  }

  /** The rows as they are looked at, without the empty one at the end. */
  get #shown(): readonly Row[] {
    return inView(this.rows, this.sorting);
  }

  #heading(column: Column) {
    const { sorting } = this;
    const isSorted = sorting?.column === column.name;
    const order = sorting?.isFalling ? "descending" : "ascending";
    return html`<th scope="col" class=${column.name} aria-sort=${isSorted ? order : nothing}>
      <button type="button" title="Sort, to look at" @click=${() => this.#sort(column)}>
        ${column.label} ${this.#unitOf(column)}
        ${isSorted ? html`<span aria-hidden="true">${sorting.isFalling ? "▾" : "▴"}</span>` : nothing}
      </button>
    </th>`;
  }

  #unitOf({ counts }: Column) {
    if (counts === "plain") return nothing;
    return html`<span class="unit">${counts === "divisions" ? "div." : counts}</span>`;
  }

  #row(row: Row, read: RowResult, reading: number | null, columns: readonly Column[]) {
    const isActive = this.active?.row === row.key;
    const shown = {
      row,
      columns,
      reading,
      isNext: row.key === this.#next.key,
      isDoubtful: reading !== null && this.doubtful.has(reading),
      doubt: reading === null || isActive ? undefined : this.#slips.found.get(reading)?.message,
      isOpen: this.open === row.key,
    };
    const problems = read.state === "unread" ? this.#shownProblems(row, read.problems) : [];
    const view = (): RowView => ({
      ...shown,
      problems,
      typed: (column, input) => this.#typed(row, column, input),
      toggled: () => this.#toggle(row),
      struck: (why) => this.#closeAfter(row, () => this.editor?.strike(row.key, why)),
      unstruck: () => this.#closeAfter(row, () => this.editor?.unstrike(row.key)),
      deleted: () => this.#delete(row, reading),
    });
    // Whatever is typed, most rows stay as they are, and nothing of them is looked at.
    return guard([...Object.values(shown), JSON.stringify(problems)], () => readingRow(view()));
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
    const { editor } = this;
    if (editor === null) return;
    const isDitto = input.value === '"';
    const text = isDitto ? this.#above(row, column) : input.value;
    if (row.key !== this.#next.key) editor.enterCell(row.key, column, text);
    else if (text !== "") editor.beginRow(row, column, text);
    // What was typed is not touched, or the cursor would jump to the end of it.
    if (isDitto) input.value = text;
  }

  /** What a ditto mark stands for. */
  #above(row: Row, column: ColumnName): string {
    const shown = this.#shown;
    const at = shown.findIndex(({ key }) => key === row.key);
    return shown.at(at === -1 ? -1 : at - 1)?.cells[column] ?? "";
  }

  #onFocus({ target }: FocusEvent): void {
    const left = this.active?.row;
    const { row, column } = target instanceof HTMLInputElement ? target.dataset : {};
    this.active =
      row === undefined
        ? null
        : { row: Number(row), column: column as ColumnName, original: (target as HTMLInputElement).value };
    if (left !== undefined && left !== this.active?.row) this.#dropIfBlank(left);
  }

  #onLeave({ relatedTarget }: FocusEvent): void {
    const left = this.active?.row;
    this.active = null;
    if (relatedTarget === null && left !== undefined) this.#dropIfBlank(left);
  }

  /** A row that was emptied is no row any more once it is left. */
  #dropIfBlank(key: number): void {
    const { survey, slide, editor } = this;
    const row = this.rows.find((each) => each.key === key);
    if (row === undefined || survey === null || slide === null) return;
    if (readRow(row, survey, slide.units).state === "blank") editor?.deleteRow(key);
  }

  #onKey(event: KeyboardEvent): void {
    const { editor, active, renderRoot } = this;
    const deleteRow = (key: number): void => {
      const body = renderRoot.querySelector<HTMLElement>(`[data-key="${key}"]`);
      const row = this.rows.find((each) => each.key === key);
      const reading = body?.dataset.reading;
      if (row !== undefined) this.#delete(row, reading === undefined ? null : Number(reading));
    };
    onTableKey(event, { editor, root: renderRoot, active, next: this.#next.key, deleteRow });
  }

  #onPaste(event: ClipboardEvent): void {
    const text = event.clipboardData?.getData("text/plain").trim() ?? "";
    const { active, editor, slide } = this;
    if (editor === null || slide === null || active === null || !/[\t\n]/.test(text)) return;
    event.preventDefault();
    const shown = this.#shown;
    const at = shown.findIndex(({ key }) => key === active.row);
    const into: PasteInto = {
      editor,
      shown,
      at: at === -1 ? shown.length : at,
      column: active.column,
      columns: this.#columns.map(({ name }) => name),
      units: slide.units,
    };
    void paste(this, text, into);
  }

  #sort(column: Column): void {
    this.sorting = sortedNext(this.sorting, column, this.rows);
  }

  #unsort(): void {
    this.sorting = null;
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
    const shown = this.#shown;
    const after = shown[shown.indexOf(row) + 1] ?? this.#next;
    const undo = this.editor?.deleteRow(row.key);
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
