import { css, html, LitElement, nothing } from "lit";
import { customElement, property } from "lit/decorators.js";
import type { ProfilePicture } from "../../picture/profilePicture.ts";
import { capitalised } from "../../report/words.ts";
import { controls } from "../style/controls.ts";

/** Rows enough to follow the profile by. */
const ROWS = 24;

/** The profile in figures, at even steps along the travel. */
@customElement("tightspot-profile-table")
export class ProfileTable extends LitElement {
  static override styles = [
    controls,
    css`
      .scroll {
        overflow-x: auto;
      }

      table {
        width: 100%;
        border-collapse: collapse;
        font-variant-numeric: tabular-nums;
      }

      th,
      td {
        padding: 0.375rem 0.5rem;
        border-bottom: 1px solid var(--rule);
        text-align: right;
      }

      th {
        font-size: var(--small);
        vertical-align: bottom;
      }
    `,
  ];

  @property({ attribute: false }) picture: ProfilePicture | null = null;

  override render() {
    if (this.picture === null) return nothing;
    const { median, band, afterAdjusting, units } = this.picture;
    const step = Math.max(1, Math.ceil((median.points.length - 1) / ROWS));
    const shown = median.points
      .map((point, index) => ({ ...point, range: band[index], left: afterAdjusting?.points[index], index }))
      .filter(({ index }) => index % step === 0 || index === median.points.length - 1);
    const figure = (value: number | undefined): string => value?.toFixed(units === "in" ? 4 : 3) ?? "";
    return html`<div class="scroll" role="group" aria-label="Lost motion along the travel" tabindex="0"><table>
      <caption class="unseen">
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
            <th scope="row">${Number(x.toFixed(2))}</th>
            <td>${figure(y)}</td>
            <td>${figure(range?.low)}</td>
            <td>${figure(range?.high)}</td>
            ${afterAdjusting === null ? nothing : html`<td>${figure(left?.y)}</td>`}
          </tr>`,
        )}
      </tbody>
    </table></div>`;
  }
}
