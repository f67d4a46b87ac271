import { html, type Markup } from "../markup.ts";
import { unitsKept } from "./unitsKept.ts";

export interface Column {
  readonly name: string;
  /** Figures stand to the right, words to the left. */
  readonly holds: "figures" | "words";
}

export interface Row {
  readonly cells: readonly (string | Markup)[];
  /** How the row is set off: a sum, or what was struck. */
  readonly as?: "total" | "struck";
}

/** A table whose headings are repeated on every page that it reaches, and whose rows no page's end cuts in two. */
export function table(columns: readonly Column[], rows: readonly Row[], caption?: string): Markup {
  return html`<table>${caption === undefined ? [] : html`<caption>${caption}</caption>`}
<thead><tr>${columns.map(({ name, holds }) => html`<th scope="col" class="${holds}">${name}</th>`)}</tr></thead>
<tbody>${rows.map(
    ({ cells, as = "" }) =>
      html`<tr class="${as}">${cells.map((cell, index) => html`<td class="${columns[index]?.holds ?? "words"}">${typeof cell === "string" ? unitsKept(cell) : cell}</td>`)}</tr>
`,
  )}</tbody></table>`;
}
