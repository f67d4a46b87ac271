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
