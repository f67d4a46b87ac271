import { PROGRAM_VERSION } from "../../inspection/programVersion.ts";
import { html, type Markup } from "../markup.ts";
import { DOCUMENT_STYLE } from "./documentStyle.ts";

/** A document to be read on a screen and printed. */
export interface Document {
  /** Also the name that a browser offers to save it under. */
  readonly title: string;
  /** What stands at the foot of every page beside its number. */
  readonly foot: string;
  readonly content: readonly Markup[];
  /** What its look has besides that of every document. */
  readonly style?: string;
}

/** Longer than this, the foot of a page would run into the number of the page. */
const LONGEST_FOOT = 80;

/** One self-contained document without scripts; the browser numbers its pages when it prints them. */
export function documentShell({ title, foot, content, style = "" }: Document): string {
  const { markup } = html`<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width">
<meta name="generator" content="Tightspot ${PROGRAM_VERSION}">
<title>${title}</title>
<style>${{ markup: `${pageMargins(foot)}${DOCUMENT_STYLE}${style}` }}</style>
</head>
<body>
<main>
${content}
</main>
</body>
</html>
`;
  return markup;
}

function pageMargins(foot: string): string {
  const letters = Array.from(foot);
  const short = letters.length > LONGEST_FOOT ? `${letters.slice(0, LONGEST_FOOT - 1).join("")}…` : foot;
  return `
@page {
  margin: 12mm 14mm 14mm;
  @bottom-left { content: ${cssText(short)}; width: 78%; }
  @bottom-right { content: "Page " counter(page) " of " counter(pages); width: 22%; text-align: right; }
}`;
}

/**
 * A text as a string of a style sheet, its quotes included. All but letters of the alphabet, figures and spaces is
 * written by its number, so that nothing in it can end the string or the style sheet.
 */
export function cssText(text: string): string {
  const written = Array.from(text, (letter) =>
    /[A-Za-z0-9 ]/.test(letter) ? letter : `\\${(letter.codePointAt(0) ?? 0).toString(16)} `,
  );
  return `"${written.join("")}"`;
}
