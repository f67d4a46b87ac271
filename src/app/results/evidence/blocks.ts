import { html, nothing } from "lit";
import type { Bar, Block, Entry, Table } from "../../../report/blocks.ts";

declare global {
  interface HTMLElementEventMap {
    /** A reading to go to, 0-based in file order. */
    "tightspot-go-to-reading": CustomEvent<number>;
  }
}

/** An entry that names more readings than these is about the survey, and leads to none of them. */
const MOST_TO_GO_TO = 6;

/** A block as the page shows it, in the look of `evidencePanel.css`. */
export function blockTemplate(block: Block) {
  switch (block.kind) {
    case "paragraph":
      return html`<p>${block.text}</p>`;
    case "list":
      return html`<ul class="lines">
        ${block.entries.map(entry)}
      </ul>`;
    case "facts":
      return html`<dl class="quantities figures">
        ${block.rows.map(
          ([name, words]) => html`<div>
            <dt>${name}</dt>
            <dd>${words}</dd>
          </div>`,
        )}
      </dl>`;
    case "table":
      return table(block);
    case "bars":
      return html`<ul class="chances">
        ${block.bars.map(bar)}
      </ul>`;
  }
}

function entry({ lead, text, severity = "note", readings = [] }: Entry) {
  if (lead === undefined) return html`<li>${text}</li>`;
  return html`<li class="led ${severity}">
    <p><strong class="figures">${lead}.</strong> ${text}</p>
    ${readings.length === 0 || readings.length > MOST_TO_GO_TO ? nothing : ways(readings)}
  </li>`;
}

function ways(readings: readonly number[]) {
  return html`<p class="go screen-only">
    ${readings.map(
      (reading) => html`<button
        type="button"
        class="quiet"
        @click=${({ target }: Event) => goTo(target, reading)}
      >
        Reading ${reading + 1}
      </button>`,
    )}
  </p>`;
}

function goTo(from: EventTarget | null, reading: number): void {
  const event = new CustomEvent("tightspot-go-to-reading", {
    detail: reading,
    bubbles: true,
    composed: true,
  });
  from?.dispatchEvent(event);
}

function table({ caption, columns, rows }: Table) {
  return html`<table class="figures">
    <caption class="label">${caption}</caption>
    <thead>
      <tr>${columns.map(({ name }) => html`<th scope="col">${name}</th>`)}</tr>
    </thead>
    <tbody>
      ${rows.map(
        ({ cells: [name, ...cells], as = "" }) => html`<tr class=${as}>
          <th scope="row">${name}</th>
          ${cells.map((cell) => html`<td>${cell}</td>`)}
        </tr>`,
      )}
    </tbody>
  </table>`;
}

function bar({ name, words, share, isLikeliest }: Bar) {
  return html`<li class=${isLikeliest ? "likeliest" : ""}>
    <span>${name}</span>
    <span class="words">${words}</span>
    <span class="bar"><i style=${`width:${(share * 100).toFixed(1)}%`}></i></span>
  </li>`;
}
