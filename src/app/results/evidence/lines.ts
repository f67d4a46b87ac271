import { html } from "lit";

/** Sentences below one another. */
export function lines(sentences: readonly string[]) {
  return html`<ul class="lines">
    ${sentences.map((sentence) => html`<li>${sentence}</li>`)}
  </ul>`;
}
