import { html, type Markup } from "../markup.ts";

/** A part of a document under a heading of its own. */
export interface Section {
  readonly title: string;
  readonly content: Markup | readonly Markup[];
  /** Whether it is kept on one page, as far as it fits there. */
  readonly whole?: boolean;
}

export function section({ title, content, whole = false }: Section): Markup {
  return html`<section class="${whole ? "whole" : "flowing"}"><h2>${title}</h2>${content}</section>`;
}
