import { html, nothing } from "lit";
import { live } from "lit/directives/live.js";
import { awaitsReading } from "../../../records/editorState.ts";
import type { Column, ColumnName } from "../../editing/columns.ts";
import { momentOf } from "../../editing/localTime.ts";
import { type CellProblem, exclusionReason, type Row } from "../../editing/rows.ts";
import "../rowActions.ts";

/** A row of the table of readings as it is to be shown, and what to do when something is done with it. */
export interface RowView {
  readonly row: Row;
  readonly columns: readonly Column[];
  /** Its place among the readings, 0-based in file order; null where it cannot be read. */
  readonly reading: number | null;
  readonly problems: readonly CellProblem[];
  /** Whether it is the empty row at the end. */
  readonly isNext: boolean;
  /** Whether a check names it. */
  readonly isDoubtful: boolean;
  /** Why it looks like a slip, as soon as it is entered. */
  readonly doubt: string | undefined;
  /** Whether its actions are shown. */
  readonly isOpen: boolean;
  readonly typed: (column: ColumnName, input: HTMLInputElement) => void;
  readonly toggled: () => void;
  readonly struck: (why: string) => void;
  readonly unstruck: () => void;
  readonly deleted: () => void;
}

/** What a row is called. */
export function rowName({ row, isNext, reading }: Pick<RowView, "row" | "isNext" | "reading">): string {
  if (isNext) return "next reading";
  if (reading === null && awaitsReading(row)) return `reading to take at ${row.cells.position}`;
  return reading === null ? "reading that cannot be read yet" : `reading ${reading + 1}`;
}

/** A row with what is wrong with it, why it is struck and what can be done about it below. */
export function readingRow(view: RowView) {
  const { row, columns, reading, problems, doubt, isNext, isOpen } = view;
  const why = exclusionReason(row);
  const below = [
    problems.length > 0 ? html`<p class="wrong" id=${`why-${row.key}`}>${inWords(problems)}</p>` : null,
    doubt === undefined ? null : html`<p class="doubt">${doubt}</p>`,
    why === null ? null : html`<p class="why">Struck: ${why}</p>`,
    isOpen ? actions(view, why !== null) : null,
  ];
  return html`<tbody
    class=${isNext ? "screen-only" : why === null ? "" : "struck"}
    data-key=${row.key}
    data-reading=${reading ?? nothing}
  >
    <tr>
      <th scope="row">${isNext ? html`<span class="number" aria-hidden="true">+</span><span class="unseen">Next reading</span>` : number(view)}</th>
      ${columns.map((column) => cell(view, column))}
    </tr>
    ${below.map((content) =>
      content === null
        ? nothing
        : html`<tr class="under">
            <td colspan=${columns.length + 1}>${content}</td>
          </tr>`,
    )}
  </tbody>`;
}

/** The number of the reading; it leads to what can be done with the row. */
function number(view: RowView) {
  const { reading, isDoubtful, isOpen, toggled, row } = view;
  const { time } = row.marks;
  return html`<button
    type="button"
    class="number ${isDoubtful ? "doubtful" : ""}"
    aria-expanded=${isOpen}
    data-row=${row.key}
    title=${typeof time === "string" ? `Taken ${momentOf(time)}` : nothing}
    aria-label=${`Strike or delete ${rowName(view)}${isDoubtful ? ", which a check names" : ""}`}
    @click=${toggled}
  >
    ${reading === null ? "–" : reading + 1}
  </button>`;
}

function cell(view: RowView, { name, label }: Column) {
  const { row, problems, typed } = view;
  const isWrong = problems.some(({ column }) => column === name);
  return html`<td>
    <input
      type="text"
      inputmode=${name === "direction" ? "text" : "decimal"}
      enterkeyhint="next"
      autocomplete="off"
      spellcheck="false"
      data-row=${row.key}
      data-column=${name}
      aria-label=${`${label}, ${rowName(view)}`}
      aria-invalid=${isWrong}
      aria-describedby=${isWrong ? `why-${row.key}` : nothing}
      .value=${live(row.cells[name] ?? "")}
      @input=${({ target }: InputEvent) => typed(name, target as HTMLInputElement)}
    />
  </td>`;
}

function actions({ toggled, struck, unstruck, deleted }: RowView, isStruck: boolean) {
  return html`<tightspot-row-actions
    .struck=${isStruck}
    @tightspot-strike=${({ detail }: CustomEvent<string>) => struck(detail)}
    @tightspot-unstrike=${unstruck}
    @tightspot-delete=${deleted}
    @keydown=${({ key }: KeyboardEvent) => key === "Escape" && toggled()}
  ></tightspot-row-actions>`;
}

function inWords(problems: readonly CellProblem[]): string {
  return problems.map(({ what }) => what).join(" ");
}
