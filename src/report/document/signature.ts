import { html, type Markup } from "../markup.ts";

/** Lines for whoever answers for the document to fill in by hand. */
export function signature(): Markup {
  return html`<div class="signature">${["Name", "Signature", "Date"].map(
    (name) => html`<span><span class="rule"></span>${name}</span>`,
  )}</div>`;
}
