import { html } from "lit";
import { uncertaintyWords } from "../../../report/uncertaintyWords.ts";
import { capitalised } from "../../../report/words.ts";
import type { EvidencePartMaker } from "./evidencePart.ts";

/** The budget of uncertainty, line by line. */
export const uncertainty: EvidencePartMaker = ({ assessment, slide }) => {
  const { lines, expanded } = uncertaintyWords(assessment, slide.units);
  return {
    title: "Uncertainty",
    isOpen: false,
    content: html`<table class="figures">
        <caption class="label">At the loosest spot, as standard uncertainty</caption>
        <tbody>
          ${lines.map(
            ([source, words]) => html`<tr>
              <th scope="row">${capitalised(source)}</th>
              <td>${words}</td>
            </tr>`,
          )}
          <tr class="total">
            <th scope="row">Expanded, 95 %</th>
            <td>${expanded}</td>
          </tr>
        </tbody>
      </table>
      <p>Conformance with the limit, after ISO 14253-1: ${assessment.conformance}.</p>`,
  };
};
