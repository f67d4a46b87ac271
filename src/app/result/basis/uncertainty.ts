import { html } from "lit";
import { lengthsIn } from "../../../inspection/lengths.ts";
import type { PartMaker } from "./part.ts";

/** The parts of an uncertainty are smaller than the readings' resolution, in millimetres. */
const FINE = 0.001;

/** The budget of uncertainty, line by line. */
export const uncertainty: PartMaker = ({ assessment, slide }) => {
  const { uncertainty: budget, repeatability, conformance } = assessment;
  const { lostMotion } = lengthsIn(slide.units, FINE);
  return {
    title: "Uncertainty",
    isOpen: false,
    content: html`<table class="figures">
        <caption class="label">At the loosest spot, as standard uncertainty</caption>
        <tbody>
          ${budget.lines.map(
            ({ source, standard }) => html`<tr>
              <th scope="row">${source}</th>
              <td>${lostMotion(standard)}</td>
            </tr>`,
          )}
          <tr class="total">
            <th scope="row">Expanded, 95 %</th>
            <td>${lostMotion(budget.expanded)}</td>
          </tr>
        </tbody>
      </table>
      <p>
        A single reading repeats to ${lostMotion(repeatability)} (one standard deviation). Conformance with the limit,
        after ISO 14253-1: ${conformance}.
      </p>`,
  };
};
