import { html } from "lit";
import type { Comparison } from "../../analysis/comparison/comparison.ts";
import type { Lengths } from "../../inspection/lengths.ts";
import { ALONG_HEADINGS, alongTheTravelRows } from "../../report/comparison/alongTheTravel.ts";
import {
  changeOf,
  comparedQuantities,
  type Figure,
  withoutEndFloat,
} from "../../report/comparison/figures.ts";
import { capitalised } from "../../report/words.ts";

/** What changed of the uniform and the uneven part, large, each with how far it may be out. */
export function keyChanges({ change }: Comparison, lengths: Lengths) {
  const changes = [
    ["Uniform part", change.uniform],
    ["Uneven part", change.uneven],
    ["Greatest lost motion", change.greatest],
  ] as const;
  return html`<dl class="key">
    ${changes.map(([term, estimate]) => {
      const { value, interval } = changeOf(estimate, lengths);
      return html`<div>
        <dt>${term}</dt>
        <dd class="value">${value}</dd>
        <dd class="range">${interval}</dd>
      </div>`;
    })}
  </dl>`;
}

/** Every quantity before and after, with its change. */
export function figures(comparison: Comparison, lengths: Lengths) {
  return html`<section>
    <table class="figures quantities">
      <caption>The figures, each with its 95 % interval</caption>
      <thead>
        <tr>
          <th scope="col">Quantity</th>
          <th scope="col">Before</th>
          <th scope="col">After</th>
          <th scope="col">Change</th>
        </tr>
      </thead>
      <tbody>
        ${comparedQuantities(comparison, lengths).map(
          ({ name, before, after, change }) => html`<tr>
            <th scope="row">${name}</th>
            ${cell(before)} ${cell(after)} ${cell(change)}
          </tr>`,
        )}
      </tbody>
    </table>
    ${withoutEndFloat(comparison, lengths).map((sentence) => html`<p class="beneath">${sentence}</p>`)}
  </section>`;
}

function cell({ value, interval }: Figure) {
  return html`<td>${value} <span class="range">${interval}</span></td>`;
}

/** Both profiles and their difference in figures. */
export function alongTheTravel(comparison: Comparison, lengths: Lengths) {
  return html`<details>
    <summary>Along the travel, as a table</summary>
    <div class="scroll" role="group" aria-label="Lost motion along the travel" tabindex="0"><table class="figures along">
      <caption class="unseen">Lost motion along the travel, ${lengths.units}</caption>
      <thead>
        <tr>
          ${ALONG_HEADINGS.map((heading, index) => html`<th scope="col">${capitalised(heading)}${index === 1 || index === 2 || index === 3 ? `, ${lengths.units}` : ""}</th>`)}
        </tr>
      </thead>
      <tbody>
        ${alongTheTravelRows(comparison, lengths).map(
          ([position, ...cells]) => html`<tr>
            <th scope="row">${position}</th>
            ${cells.map((each) => html`<td>${each}</td>`)}
          </tr>`,
        )}
      </tbody>
    </table></div>
  </details>`;
}
