import { html, nothing } from "lit";
import { unsafeHTML } from "lit/directives/unsafe-html.js";
import type { Bar, Block, Entry, Figure, Picture, Table } from "../../../report/blocks.ts";
import { inPageColours } from "../../ui/pageColours.ts";

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
    case "picture":
      return picture(block);
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
  const isWide = columns.every(({ holds }) => holds === "figures");
  const content = html`<table class="figures ${isWide ? "along" : ""}">
    <caption class="label">${caption}</caption>
    <thead>
      <tr>${columns.map(({ name }) => html`<th scope="col">${name}</th>`)}</tr>
    </thead>
    <tbody>
      ${rows.map(
        ({ cells: [name = "", ...cells], as = "" }) => html`<tr class=${as}>
          <th scope="row">${cellTemplate(name)}</th>
          ${cells.map((cell) => html`<td>${cellTemplate(cell)}</td>`)}
        </tr>`,
      )}
    </tbody>
  </table>`;
  return isWide
    ? html`<div class="scroll" role="group" aria-label=${caption} tabindex="0">${content}</div>`
    : content;
}

function cellTemplate(cell: string | Figure) {
  return typeof cell === "string" ? cell : html`${cell.value} <span class="range">${cell.interval}</span>`;
}

/** The picture twice: the style shows the one that there is width for, and nobody hears the other. */
function picture({ title, svg, caption }: Picture) {
  return html`<figure>
    <figcaption>${title}</figcaption>
    ${(["wide", "narrow"] as const).map(
      (setting) => html`<div class="picture ${setting}">${unsafeHTML(inPageColours(svg(setting)))}</div>`,
    )}
    ${caption === undefined ? nothing : html`<p class="beneath">${caption}</p>`}
  </figure>`;
}

function bar({ name, words, share, isLikeliest }: Bar) {
  return html`<li class=${isLikeliest ? "likeliest" : ""}>
    <span>${name}</span>
    <span class="words">${words}</span>
    <span class="bar"><i style=${`width:${(share * 100).toFixed(1)}%`}></i></span>
  </li>`;
}
