import { html, type Markup } from "../markup.ts";
import { unitsKept } from "./unitsKept.ts";

export type Fact = readonly [name: string, words: string];

/** Things by name, each with what is said of it. */
export function facts(rows: readonly Fact[]): Markup {
  return html`<dl class="facts">${rows.map(
    ([name, words]) => html`<div><dt>${name}</dt><dd>${unitsKept(words)}</dd></div>`,
  )}</dl>`;
}
