/**
 * The look of the log sheet, in black on white. No page size is set: A4 and US Letter both work, and nothing is
 * wider than the narrower of the two.
 */
export const SHEET_STYLE = `
@page { margin: 12mm; }
* { box-sizing: border-box; }
:root { color-scheme: only light; }
body {
  max-width: 190mm;
  margin: 0 auto;
  background: #fff;
  color: #000;
  font: 9.5pt/1.35 system-ui, "Segoe UI", Roboto, "Noto Sans", "Helvetica Neue", Arial, sans-serif;
  font-variant-numeric: tabular-nums;
}
@media screen {
  body { padding: 6mm; }
  .line { flex-wrap: wrap; }
}
h1 { margin: 0 0 3mm; font-size: 15pt; line-height: 1.2; }
h2 { margin: 4mm 0 1.5mm; border-bottom: 0.4mm solid #000; font-size: 11pt; break-after: avoid; }
p, ul, dl { margin: 0 0 1.5mm; }
ul { padding-left: 5mm; }
li { break-inside: avoid; }
.lines + .lines { margin-top: 1.5mm; }
.lines { display: flex; flex-wrap: wrap; gap: 1.5mm 6mm; }
.line { display: flex; flex: 1 1 40%; align-items: end; min-height: 8mm; gap: 2mm; }
.line > .rule { flex: 1; min-width: 12mm; border-bottom: 0.2mm solid #000; overflow-wrap: anywhere; }
.short > .line { flex-basis: 28%; }
.answer { white-space: nowrap; }
.facts { margin-top: 3mm; }
.ticks { columns: 2; column-gap: 8mm; padding: 0; list-style: none; }
.ticks li { display: flex; gap: 2.5mm; align-items: baseline; padding: 0.6mm 0; }
.tick { display: inline-block; flex: none; width: 4mm; height: 4mm; border: 0.3mm solid #000; vertical-align: -0.6mm; }
.boxes { display: flex; flex-wrap: wrap; align-items: center; gap: 2mm 5mm; }
.box { display: inline-block; width: 26mm; height: 8.5mm; border: 0.3mm solid #000; vertical-align: middle; }
.cautions { padding: 2mm 3mm 0.5mm; border: 0.6mm solid #000; break-inside: avoid; }
.cautions h2 { margin-top: 0; border: 0; }
.readings { break-before: page; }
table { width: 100%; border-collapse: collapse; table-layout: fixed; }
caption { margin-bottom: 2mm; text-align: left; }
thead { display: table-header-group; }
tr { break-inside: avoid; }
th, td { height: 8.5mm; padding: 0 1.5mm; border: 0.2mm solid #000; }
thead th { height: auto; padding: 1mm 1.5mm; font-size: 9pt; line-height: 1.2; text-align: left; vertical-align: bottom; }
thead .way { border-left-width: 0.6mm; border-right-width: 0.6mm; text-align: center; }
.first { border-left-width: 0.6mm; }
.last { border-right-width: 0.6mm; }
.number { width: 9mm; }
.position { width: 21mm; }
.turns { width: 15mm; }
tbody th, .right { text-align: right; font-weight: 700; }
tbody .turns { font-weight: 400; text-align: right; }
.order { display: block; height: 100%; padding-top: 0.4mm; color: #555; font-size: 6.5pt; line-height: 1; }
.further td { height: auto; padding-block: 1mm; border-block-width: 0.6mm; }
.further { break-after: avoid; }
.round { font-weight: 700; }
.round ~ .round { break-before: page; }
.why { font-size: 9pt; }
`;
