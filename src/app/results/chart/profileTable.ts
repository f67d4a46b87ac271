import { html, LitElement, nothing, unsafeCSS } from "lit";
import { customElement, property } from "lit/decorators.js";
import type { Assessment } from "../../../analysis/assessment.ts";
import { groupByPosition } from "../../../analysis/correct/samePlace.ts";
import { lengthsIn } from "../../../inspection/lengths.ts";
import { roundTo, toMillimetres } from "../../../inspection/units.ts";
import type { Point, ProfilePicture } from "../../../picture/profilePicture.ts";
import { capitalised } from "../../../report/words.ts";
import { controls } from "../../ui/sharedStyles.ts";
import profileTableCss from "./profileTable.css?inline";

/** About as many rows show the course of the profile. */
const ROWS = 24;

/** The profile in figures at even steps along the x axis, and the readings of each station. */
@customElement("tightspot-profile-table")
export class ProfileTable extends LitElement {
  static override styles = [controls, unsafeCSS(profileTableCss)];

  @property({ attribute: false }) picture: ProfilePicture | null = null;
  @property({ attribute: false }) assessment: Assessment | null = null;

  override render() {
    const { picture, assessment } = this;
    if (picture === null || assessment === null) return nothing;
    const { figure } = lengthsIn(picture.units, assessment.resolution);
    const written = (value: number | undefined): string =>
      value === undefined ? "" : figure(toMillimetres(value, picture.units));
    return html`<div class="scroll" role="group" aria-label="Lost motion along the travel" tabindex="0">
        ${profile(picture, written)}
      </div>
      <div class="scroll" role="group" aria-label="Readings at each station" tabindex="0">
        ${stations(picture, written)}
      </div>`;
  }
}

type Written = (value: number | undefined) => string;

function profile({ median, band, afterAdjusting, units, xAxis }: ProfilePicture, written: Written) {
  const inside = median.points
    .map((point, index) => ({ ...point, range: band[index], left: afterAdjusting?.points[index] }))
    .filter(({ x }) => x >= xAxis.from && x <= xAxis.to);
  const step = Math.max(1, Math.ceil((inside.length - 1) / ROWS));
  const shown = inside.filter((_, index) => index % step === 0 || index === inside.length - 1);
  return html`<table>
    <caption>
      Lost motion along the travel
    </caption>
    <thead>
      <tr>
        <th scope="col">Position, ${units}</th>
        <th scope="col">Lost motion, ${units}</th>
        <th scope="col">95 % from</th>
        <th scope="col">to</th>
        ${afterAdjusting === null ? nothing : html`<th scope="col">${capitalised(afterAdjusting.short)}</th>`}
      </tr>
    </thead>
    <tbody>
      ${shown.map(
        ({ x, y, range, left }) => html`<tr>
          <th scope="row">${roundTo(x, 2)}</th>
          <td>${written(y)}</td>
          <td>${written(range?.low)}</td>
          <td>${written(range?.high)}</td>
          ${afterAdjusting === null ? nothing : html`<td>${written(left?.y)}</td>`}
        </tr>`,
      )}
    </tbody>
  </table>`;
}

/** The readings of each station, struck ones in a column of their own. */
function stations({ readings, struck, units }: ProfilePicture, written: Written) {
  const all = [
    ...readings.map((point) => ({ ...point, isStruck: false })),
    ...struck.map((point) => ({ ...point, isStruck: true })),
  ];
  const figures = (points: readonly Point[]): string => points.map(({ y }) => written(y)).join("  ");
  return html`<table>
    <caption>
      Readings at each station
    </caption>
    <thead>
      <tr>
        <th scope="col">Position, ${units}</th>
        <th scope="col">Read, ${units}</th>
        ${struck.length === 0 ? nothing : html`<th scope="col">Struck, ${units}</th>`}
      </tr>
    </thead>
    <tbody>
      ${groupByPosition(all, ({ x }) => toMillimetres(x, units)).map(
        (here) => html`<tr>
          <th scope="row">${roundTo(here[0]?.x ?? 0, 3)}</th>
          <td>${figures(here.filter(({ isStruck }) => !isStruck))}</td>
          ${struck.length === 0 ? nothing : html`<td>${figures(here.filter(({ isStruck }) => isStruck))}</td>`}
        </tr>`,
      )}
    </tbody>
  </table>`;
}
