import { html } from "lit";

/** Quantities by name, each with its value in words. */
export function quantities(rows: readonly (readonly [name: string, words: string])[]) {
  return html`<dl class="quantities figures">
    ${rows.map(
      ([name, words]) => html`<div>
        <dt>${name}</dt>
        <dd>${words}</dd>
      </div>`,
    )}
  </dl>`;
}
