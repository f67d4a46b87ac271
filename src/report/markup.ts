import { escapeMarkup } from "../picture/svg.ts";

/** Text that is markup already. */
export interface Markup {
  readonly markup: string;
}

type Content = string | number | Markup | readonly Markup[];

/** Markup from a template: what is filled in is escaped unless it is markup itself. */
export function html(parts: TemplateStringsArray, ...filled: readonly Content[]): Markup {
  return { markup: parts.reduce((text, part, index) => text + written(filled[index - 1]) + part) };
}

/** The same markup so many times. */
export function repeated(times: number, content: Markup): readonly Markup[] {
  return Array.from({ length: times }, () => content);
}

function written(content: Content | undefined): string {
  if (content === undefined) return "";
  if (typeof content === "string" || typeof content === "number") return escapeMarkup(String(content));
  return "markup" in content ? content.markup : content.map(({ markup }) => markup).join("");
}
