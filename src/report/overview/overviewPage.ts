import { type FileProblem, inOneLine } from "../../inspection/problem.ts";
import { LIGHT_PALETTE as COLOUR } from "../../picture/palette.ts";
import { html, type Markup } from "../markup.ts";
import { estimateWords } from "../words.ts";
import { cautionsFor, headingOf } from "./overviewText.ts";
import { calledOf, lengthsOf, type SlideOverview, takenOf, toBeDone } from "./slideOverview.ts";
import { worstFirst } from "./worstFirst.ts";

const HEADINGS = [
  "Slide",
  "What to do",
  "Greatest lost motion",
  "Limit",
  "Uniform part",
  "Uneven part",
  "Surveyed",
];

const STYLE = `
@page { margin: 12mm; }
:root { color-scheme: only light; }
body { margin: 0 auto; max-width: 60rem; background: #fff; color: #16202c; font: 10pt/1.4 system-ui, sans-serif; font-variant-numeric: tabular-nums; }
@media screen { body { padding: 4vw; } .wide { overflow-x: auto; } }
h1, h2 { color: ${COLOUR.ink}; line-height: 1.2; }
table { width: 100%; border-collapse: collapse; }
tr { break-inside: avoid; }
th, td { padding: 1.2mm 3mm 1.2mm 0; border-bottom: 0.2mm solid ${COLOUR.paleInk}; text-align: left; vertical-align: top; }
thead th { border-bottom: 0.4mm solid ${COLOUR.ink}; vertical-align: bottom; }
tbody th { font-weight: 700; }
small { display: block; color: ${COLOUR.paleInk}; font-weight: 400; overflow-wrap: anywhere; }
`;

/**
 * Many slides as one self-contained document without scripts: a table with the worst first, and what could not be
 * read, so that nothing is missing unsaid.
 */
export function overviewPage(slides: readonly SlideOverview[], unread: readonly FileProblem[]): string {
  const { markup } = html`<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width">
<title>Lost motion of ${headingOf(slides, unread)}</title>
<style>${{ markup: STYLE }}</style>
</head>
<body>
<h1>Lost motion of ${headingOf(slides, unread)}</h1>
<div class="wide"><table>
<thead><tr>${HEADINGS.map((heading) => html`<th scope="col">${heading}</th>`)}</tr></thead>
<tbody>
${worstFirst(slides).map(row)}</tbody>
</table></div>
${unread.length === 0 ? [] : notRead(unread)}
<h2>Cautions</h2>
${listed(cautionsFor(slides))}
</body>
</html>
`;
  return markup;
}

function row(slide: SlideOverview): Markup {
  const { greatest, uniform, uneven, settings, conformance } = slide.assessment;
  const lengths = lengthsOf(slide);
  const cells = [
    toBeDone(slide),
    estimateWords(greatest, lengths),
    `${lengths.position(settings.limit)}; keeping it is ${conformance}`,
    estimateWords(uniform, lengths),
    estimateWords(uneven, lengths),
    takenOf(slide),
  ];
  return html`<tr><th scope="row">${calledOf(slide)}<small>${slide.file}</small></th>${cells.map((cell) => html`<td>${cell}</td>`)}</tr>
`;
}

function notRead(unread: readonly FileProblem[]): Markup {
  return html`<h2>Not read, or not whole</h2>
${listed(unread.map(({ file, problem }) => inOneLine({ ...problem, where: [file, problem.where].filter((part) => part !== "").join(": ") })))}`;
}

function listed(lines: readonly string[]): Markup {
  return html`<ul>${lines.map((line) => html`<li>${line}</li>`)}</ul>`;
}
