import type { Plan } from "../../intake/plan/measuringPlan.ts";
import { html, type Markup, repeated } from "../markup.ts";
import { type ListedRound, type ListedStation, listedRounds } from "./listedRounds.ts";
import { type LostMotionMethod, METHODS } from "./method.ts";

const UNIT_NAMES = { mm: "millimetres", in: "inches" } as const;
/** Rows left empty for stations that the plan does not name. */
const FURTHER_ROWS = 3;

/** The boxes to write in, station by station, those of the way out beside those of the way back. */
export function sheetTable(plan: Plan, method: LostMotionMethod): Markup {
  const { units } = plan;
  const { columns } = METHODS[method];
  return html`<table>
    <caption>
      Write in ${method === "dial-pair" ? "divisions of the dial" : UNIT_NAMES[units]}. Out: from the top down. Back: from the bottom
      up, ending with the first station; the small figures give the order. Strike a reading that went wrong with one line
      and a reason, and read again beside it.
    </caption>
    ${head(units, columns)}
    <tbody>
      ${listedRounds(plan).flatMap((round) => roundRows(round, columns.length))}
      ${further(columns.length)}
    </tbody>
  </table>`;
}

/** The rows of one round under its title, each box with its place in the order of reading. */
function roundRows({ title, stations, again }: ListedRound, count: number): readonly Markup[] {
  const taken = 2 * ((stations[0]?.number ?? 1) - 1);
  const last = taken + 2 * stations.length;
  return [
    ...(title === "" ? [] : [heading(title, count, "further round")]),
    ...(again === null ? [] : [stationRow(again, count, "", String(last + 1))]),
    ...stations.map((station, index) =>
      stationRow(station, count, String(taken + index + 1), String(last - index)),
    ),
  ];
}

/** @param out, back places in the order of reading; empty where the station is not read on that way */
function stationRow(
  { number, figure, turns }: ListedStation,
  count: number,
  out: string,
  back: string,
): Markup {
  return html`<tr>
    <td class="right">${number}</td>
    <th scope="row" class="position">${figure}</th>
    <td class="turns">${turns ?? ""}</td>
    ${boxes(count, out)}${boxes(count, back)}
    <td></td>
  </tr>`;
}

/** A row across the table, on what follows it. */
function heading(text: string, count: number, kind: "further" | "further round" = "further"): Markup {
  return html`<tr class="${kind}">
    <td colspan="${count * 2 + 4}">${text}</td>
  </tr>`;
}

/** Empty rows, with what they are for. */
function further(count: number): Markup {
  const row = html`<tr>
    <td></td>
    <td></td>
    <td></td>
    ${boxes(count, "")}${boxes(count, "")}
    <td></td>
  </tr>`;
  const use =
    "Further stations: around the highest reading, since a worn place can be narrow, and where a reading is in doubt.";
  return html`${heading(use, count)}
    ${repeated(FURTHER_ROWS, row)}`;
}

function head(units: string, columns: readonly string[]): Markup {
  const way = (name: string): Markup =>
    html`<th scope="colgroup" class="way" colspan="${columns.length}">${name}</th>`;
  const names = columns.map(
    (name, index) => html`<th scope="col" class="${edges(index, columns.length)}">${name}</th>`,
  );
  return html`<thead>
    <tr>
      <th scope="col" class="number" rowspan="2">No.</th>
      <th scope="col" class="position" rowspan="2">Position, ${units}</th>
      <th scope="col" class="turns" rowspan="2">Screw turns</th>
      ${way("Out ↓")}${way("Back ↑")}
      <th scope="col" rowspan="2">Note</th>
    </tr>
    <tr>
      ${names}${names}
    </tr>
  </thead>`;
}

/** The boxes of one reading, the first with its place in the order. */
function boxes(count: number, order: string): readonly Markup[] {
  return Array.from(
    { length: count },
    (_, index) =>
      html`<td class="${edges(index, count)}"><span class="order">${index === 0 ? order : ""}</span></td>`,
  );
}

function edges(index: number, count: number): string {
  return [index === 0 ? "first" : "", index === count - 1 ? "last" : ""].join(" ").trim();
}
