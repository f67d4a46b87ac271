import { LIGHT_PALETTE as COLOUR } from "../../picture/palette.ts";

const RULE = "#b9c3cf";

/**
 * The look of a document, in the colours of the pictures. What matters shows by rules, weight and words, never by colour
 * alone, so that it reads in black and white and where a browser prints no backgrounds. No page size is set: A4 and US
 * Letter both work.
 */
export const DOCUMENT_STYLE = `
@page { font: 8pt/1.2 system-ui, sans-serif; color: ${COLOUR.paleInk}; }
* { box-sizing: border-box; }
:root { color-scheme: only light; }
body {
  max-width: 182mm;
  margin: 0 auto;
  background: #fff;
  color: #16202c;
  font: 9.5pt/1.42 system-ui, "Segoe UI", Roboto, "Noto Sans", "Helvetica Neue", Arial, sans-serif;
  font-variant-numeric: tabular-nums;
  overflow-wrap: break-word;
  orphans: 3;
  widows: 3;
}
@media screen {
  body { padding: clamp(4mm, 4vw, 14mm); }
  .wide { overflow-x: auto; }
}
h1, h2, h3 { color: ${COLOUR.ink}; line-height: 1.15; letter-spacing: -0.01em; text-wrap: balance; }
h1 { margin: 0; font-size: 21pt; letter-spacing: -0.02em; }
h2 { margin: 0 0 2.5mm; padding-bottom: 1mm; border-bottom: 0.35mm solid ${COLOUR.ink}; font-size: 12.5pt; break-after: avoid; }
h3 { margin: 3.5mm 0 1.5mm; font-size: 9.5pt; break-after: avoid; }
p { margin: 0 0 2mm; }
section { margin-top: 6mm; }
.whole, .drawing, .verdict, .cautions { break-inside: avoid; }

.head { display: flex; flex-wrap: wrap; justify-content: space-between; align-items: end; gap: 2mm 8mm; }
.head p { margin: 1mm 0 0; color: ${COLOUR.paleInk}; }
.head .kicker { margin: 0 0 1.5mm; }
.kicker { margin: 0; color: ${COLOUR.paleInk}; font-size: 8.5pt; font-weight: 600; letter-spacing: 0.01em; }

.verdict { margin-top: 5mm; padding: 0.5mm 0 0.5mm 5mm; border-left: 2mm solid ${COLOUR.paleInk}; }
.verdict.good { border-color: #17653a; }
.verdict.nut { border-color: ${COLOUR.nut}; }
.verdict.screw { border-color: ${COLOUR.limit}; }
.verdict .change { margin-bottom: 3mm; color: ${COLOUR.ink}; font-size: 13pt; line-height: 1.35; }
.verdict h2 { margin: 0 0 1.5mm; padding: 0; border: 0; font-size: 17pt; }
.verdict p:last-child { margin: 0; font-size: 10pt; }

.overview { display: grid; grid-template-columns: 1fr; gap: 0 9mm; margin-top: 5mm; break-inside: avoid; }
.overview.halves { grid-template-columns: 1fr 1fr; }
.key { display: grid; grid-template-columns: 1fr 1fr; margin: 0; border-top: 0.25mm solid ${RULE}; }
.key div { padding: 1.6mm 3mm 1.6mm 0; border-bottom: 0.25mm solid ${RULE}; }
.key dt { color: ${COLOUR.paleInk}; font-size: 8.5pt; font-weight: 600; }
.key dd { margin: 0; font-size: 8.5pt; line-height: 1.3; }
.key .value { color: ${COLOUR.ink}; font-size: 15pt; font-weight: 700; line-height: 1.2; white-space: nowrap; }
.changes .value { font-size: 12.5pt; }
.overview:not(.halves) .key { grid-template-columns: repeat(4, 1fr); }

.bars { margin: 0; padding: 0; font-size: 8.5pt; line-height: 1.3; list-style: none; }
.bars li { display: flex; flex-wrap: wrap; justify-content: space-between; gap: 0 2mm; padding-bottom: 0.9mm; }
.bars .likeliest { font-weight: 700; }
.bars .track { flex: 0 0 100%; margin-top: 0.3mm; border-bottom: 0.2mm solid ${RULE}; }
.bars .bar { display: block; border-bottom: 1.8mm solid #9aa8b8; }
.bars .likeliest .bar { border-color: ${COLOUR.ink}; }

.cautions { margin-top: 5mm; padding: 2mm 4mm 1mm; border: 0.5mm solid ${COLOUR.nut}; font-size: 8.5pt; line-height: 1.35; }
.cautions h2 { margin-bottom: 1mm; padding: 0; border: 0; color: #000; font-size: 9.5pt; }
.cautions .lines { columns: 2; column-gap: 9mm; }
.lines { margin: 0; padding-left: 4.5mm; list-style: square; }
.lines li { margin-bottom: 1mm; break-inside: avoid; }

figure { margin: 0; }
.drawing svg { margin-top: -2mm; }
figure svg { display: block; width: 100%; height: auto; }
figcaption { margin-top: 1.5mm; color: ${COLOUR.paleInk}; font-size: 8.5pt; }

.photographs { columns: 2; column-gap: 6mm; margin-top: 3mm; }
.photographs > * { break-inside: avoid; margin-bottom: 4mm; }
.photographs img { display: block; max-width: 100%; max-height: 90mm; width: auto; height: auto; }

.facts { margin: 0 0 2mm; }
.facts div { display: grid; grid-template-columns: 53mm 1fr; gap: 4mm; padding: 0.9mm 0; border-bottom: 0.2mm solid ${RULE}; break-inside: avoid; }
.facts dt { color: ${COLOUR.paleInk}; font-weight: 600; }
.facts dd { margin: 0; }
h1, caption, .facts dd, .words, .head p, .verdict, .lines { overflow-wrap: anywhere; }

table { width: 100%; margin: 0 0 2mm; border-collapse: collapse; }
caption { padding-bottom: 1.5mm; color: ${COLOUR.paleInk}; font-size: 8.5pt; text-align: left; }
thead { display: table-header-group; }
tr { break-inside: avoid; }
th, td { padding: 0.9mm 2.5mm; border-bottom: 0.2mm solid ${RULE}; vertical-align: top; }
:is(th, td):first-child { padding-left: 0; }
:is(th, td):last-child { padding-right: 0; }
th { border-bottom: 0.35mm solid ${COLOUR.ink}; color: ${COLOUR.paleInk}; font-size: 8.5pt; vertical-align: bottom; }
.words { min-width: 22mm; text-align: left; }
.compact :is(th, td) { padding-block: 0.5mm; }
.figures { text-align: right; }
td.figures { white-space: nowrap; }
.side-by-side { columns: 2; column-gap: 12mm; }
.total td { border-top: 0.35mm solid ${COLOUR.ink}; border-bottom: 0; font-weight: 700; }
.struck .figures { text-decoration: line-through; }
.struck .words { font-style: italic; }

.signature { display: grid; grid-template-columns: 2fr 2fr 1fr; gap: 8mm; margin-top: 10mm; color: ${COLOUR.paleInk}; font-size: 8.5pt; break-before: avoid; break-inside: avoid; }
.signature .rule { display: block; height: 9mm; margin-bottom: 1mm; border-bottom: 0.3mm solid #000; }
.made { margin-top: 5mm; break-before: avoid; color: ${COLOUR.paleInk}; font-size: 8.5pt; }

@media screen and (max-width: 40rem) {
  .overview.halves, .facts div { grid-template-columns: 1fr; gap: 3mm 0; }
  .changes .value { font-size: 12.5pt; }
.overview:not(.halves) .key { grid-template-columns: 1fr 1fr; }
  .facts div { gap: 0; }
  .words { min-width: 0; }
  .compact :is(th, td) { padding-inline: 1.2mm; }
  .cautions .lines, .side-by-side { columns: 1; }
}
`;
