import type { Plan } from "../../intake/plan/measuringPlan.ts";
import { html, type Markup, repeated } from "./markup.ts";
import { type LostMotionMethod, METHODS } from "./method.ts";
import { positionFigures } from "./positionFigures.ts";

const UNIT_NAMES = { mm: "millimetres", in: "inches" } as const;
/** Rows left empty for stations that the plan does not name. */
const FURTHER_ROWS = 3;

/** The boxes to write in, station by station, those of the way out beside those of the way back. */
export function sheetTable(plan: Plan, method: LostMotionMethod): Markup {
  const { stations, units } = plan;
  const { columns } = METHODS[method];
  const figures = positionFigures(plan);
  const last = stations.length * 2;
  return html`<table>
    <caption>
      Write in ${method === "dial-pair" ? "divisions of the dial" : UNIT_NAMES[units]}. Out: from the top down. Back: from the bottom
      up, ending with the first station; the small figures give the order. Strike a reading that went wrong with one line
      and a reason, and read again beside it.
    </caption>
    ${head(units, columns)}
    <tbody>
      ${stations.map(
        ({ turns }, index) => html`<tr>
          <td class="right">${index + 1}</td>
          <th scope="row" class="position">${figures[index] ?? ""}</th>
          <td class="turns">${index === 0 ? "" : turns.toFixed(2)}</td>
          ${boxes(columns.length, String(index + 1))}${boxes(columns.length, String(last - index))}
          <td></td>
        </tr>`,
      )}
      ${further(columns.length)}
    </tbody>
  </table>`;
}

/** Empty rows, with what they are for. */
function further(count: number): Markup {
  const row = html`<tr>
    <td></td>
    <th></th>
    <td></td>
    ${boxes(count, "")}${boxes(count, "")}
    <td></td>
  </tr>`;
  return html`<tr class="further">
      <td colspan="${count * 2 + 4}">
        Further stations: around the highest reading, since a worn place can be narrow, and where a reading is in doubt.
      </td>
    </tr>
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
