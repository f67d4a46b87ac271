import type { Bar, Block, Column, Fact, Figure, Part, Table } from "../blocks.ts";
import { html, type Markup } from "../markup.ts";

/** A part of a document under a heading of its own. */
export interface Section {
  readonly title: string;
  readonly content: Markup | readonly Markup[];
  /** How it is set: broken at a page's end like text, whole as far as it fits a page, or a drawing with its own title. */
  readonly as?: "text" | "whole" | "drawing";
}

export function section({ title, content, as = "text" }: Section): Markup {
  if (as === "drawing") return html`<section class="drawing" aria-label="${title}">${content}</section>`;
  return html`<section class="${as}"><h2>${title}</h2>${content}</section>`;
}

/** Makes a section of a document from a part that belongs to no medium. */
export function sectionFrom<Source>(
  make: (source: Source) => Part | null,
  as: Section["as"] = "text",
): (source: Source) => Section | null {
  return (source) => {
    const part = make(source);
    return part && { title: part.title, content: part.blocks.map(blockMarkup), as };
  };
}

/** The text with every figure on one line with its unit. */
export function withUnits(text: string): string {
  return text.replace(/(\d) (?=(?:mm|in|°C|h)\b)/g, "$1\u00a0");
}

/** Blocks as the document shows them, each in an element of its own. */
export function blockMarkup(block: Block): Markup {
  switch (block.kind) {
    case "paragraph":
      return html`<p>${withUnits(block.text)}</p>`;
    case "list":
      return html`<ul class="lines">${block.entries.map(
        ({ lead, text }) =>
          html`<li>${lead === undefined ? [] : html`<strong>${withUnits(lead)}.</strong> `}${withUnits(text)}</li>`,
      )}</ul>`;
    case "facts":
      return facts(block.rows);
    case "table":
      return blockTable(block);
    case "bars":
      return html`<ul class="bars">${block.bars.map(bar)}</ul>`;
    case "picture":
      return html`<div class="drawing">${figure(block.svg("sheet"), block.caption)}</div>`;
  }
}

/** A table of nothing but figures is set close, so that it fits a narrow screen. */
function blockTable({ columns, rows, caption }: Table): Markup {
  const isCompact = columns.every(({ holds }) => holds === "figures");
  const cells = rows.map((row) => ({ ...row, cells: row.cells.map(cellMarkup) }));
  return html`<div class="${isCompact ? "compact" : ""}">${table(columns, cells, caption)}</div>`;
}

function cellMarkup(cell: string | Figure): string | Markup {
  if (typeof cell === "string") return cell;
  const { value, interval } = cell;
  return html`${withUnits(value)}${interval === "" ? [] : html`<br>${withUnits(interval)}`}`;
}

function bar({ name, words, share, isLikeliest }: Bar): Markup {
  return html`<li class="${isLikeliest ? "likeliest" : ""}">
<span>${name}</span> <span>${words}</span>
<span class="track"><span class="bar" style="width:${(share * 100).toFixed(1)}%"></span></span></li>`;
}

/** Sentences below one another. */
export function lines(sentences: readonly string[]): Markup {
  return html`<ul class="lines">${sentences.map((sentence) => html`<li>${withUnits(sentence)}</li>`)}</ul>`;
}

/** Facts by name. */
export function facts(rows: readonly Fact[]): Markup {
  return html`<dl class="facts">${rows.map(
    ([name, words]) => html`<div><dt>${name}</dt><dd>${withUnits(words)}</dd></div>`,
  )}</dl>`;
}

/** A row of a document's table: a cell may hold markup. */
export interface MarkupRow {
  readonly cells: readonly (string | Markup)[];
  /** How the row is set off: a sum, or a reading that was struck. */
  readonly as?: "total" | "struck";
}

/** A table whose headings are repeated on every page that it reaches, and whose rows no page's end cuts in two. */
export function table(columns: readonly Column[], rows: readonly MarkupRow[], caption?: string): Markup {
  return html`<table>${caption === undefined ? [] : html`<caption>${caption}</caption>`}
<thead><tr>${columns.map(({ name, holds }) => html`<th scope="col" class="${holds}">${name}</th>`)}</tr></thead>
<tbody>${rows.map(
    ({ cells, as = "" }) =>
      html`<tr class="${as}">${cells.map((cell, index) => html`<td class="${columns[index]?.holds ?? "words"}">${typeof cell === "string" ? withUnits(cell) : cell}</td>`)}</tr>
`,
  )}</tbody></table>`;
}

/** A drawing, with what it does not say itself. */
export function figure(svg: string, caption?: string): Markup {
  const words = caption === undefined ? [] : html`<figcaption>${withUnits(caption)}</figcaption>`;
  return html`<figure>${{ markup: svg }}${words}</figure>`;
}

/** Lines for name, signature and date, to be filled in by hand. */
export function signature(): Markup {
  return html`<div class="signature">${["Name", "Signature", "Date"].map(
    (name) => html`<span><span class="rule"></span>${name}</span>`,
  )}</div>`;
}
