/** The slip has to stay on one page, A4 or US Letter: smaller letters, two columns, little room between. */
export const SLIP_STYLE = `
.slip { font-size: 7.8pt; line-height: 1.25; }
.slip h1 { font-size: 14pt; }
.slip .kicker { margin: 0 0 0.5mm; font-size: 7.8pt; }
.slip section { margin-top: 2mm; break-inside: avoid; }
.slip h2 { margin-bottom: 1mm; padding-bottom: 0.5mm; font-size: 9.5pt; }
.slip .drawing svg { max-height: 46mm; margin: 0; }
.slip .pair { display: grid; grid-template-columns: 1fr 1fr; gap: 0 7mm; }
.slip .facts div { grid-template-columns: 34mm 1fr; gap: 2mm; padding: 0.3mm 0; }
.slip th, .slip td { padding-block: 0.3mm; }
.slip th { font-size: 8pt; }
.slip .facts, .slip table, .slip p { margin-bottom: 0.5mm; }
.slip .passes { margin: 0; padding: 0; columns: 6; column-gap: 4mm; list-style: none; }
.slip .passes li { display: flex; justify-content: space-between; border-bottom: 0.2mm solid #b9c3cf; break-inside: avoid; }
.slip .passes b { font-weight: 600; color: #50647d; }
.slip .small { font-size: 6.8pt; line-height: 1.2; }
.slip .small .lines { columns: 2; column-gap: 8mm; }
.slip .small .lines li { margin-bottom: 0.4mm; }
.slip .cautions { margin-top: 1.5mm; padding: 1mm 3mm 0.5mm; }
.slip .cautions h2 { font-size: 8pt; }
.slip .rule { display: inline-block; min-width: 30mm; border-bottom: 0.25mm solid #000; }
.slip .made { margin-top: 1mm; margin-bottom: 0; font-size: 6.8pt; }
@media screen and (max-width: 40rem) {
  .slip .pair { grid-template-columns: 1fr; }
  .slip .passes { columns: 2; }
  .slip .small .lines { columns: 1; }
}
`;
