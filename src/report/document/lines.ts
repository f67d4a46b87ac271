import { html, type Markup } from "../markup.ts";
import { unitsKept } from "./unitsKept.ts";

/** Sentences below one another. */
export function lines(sentences: readonly string[]): Markup {
  return html`<ul class="lines">${sentences.map((sentence) => html`<li>${unitsKept(sentence)}</li>`)}</ul>`;
}
