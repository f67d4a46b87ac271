import { html, type LitElement } from "lit";
import { chooseSurveys, type SurveyChoice } from "../../analysis/comparison/chooseSurveys.ts";
import { hasReadings, surveysByDate } from "../../analysis/surveysByDate.ts";
import type { Inspection } from "../../inspection/schema.ts";
import { surveyName } from "../editing/surveys.ts";

/** Which two surveys are compared, to be changed; choosing the other one of the two turns them round. */
export function surveyChoice(host: LitElement, inspection: Inspection, choice: SurveyChoice) {
  const chosen = chooseSurveys(inspection, choice);
  const { from, to } = chosen.ok ? chosen.value : { from: "", to: "" };
  const choose = (next: Required<SurveyChoice>): void => {
    host.dispatchEvent(
      new CustomEvent("tightspot-compare-choice", { detail: next, bubbles: true, composed: true }),
    );
  };
  return html`<div class="choice">
    ${select("Before", inspection, from, (id) => choose({ from: id, to: id === to ? from : to }))}
    ${select("After", inspection, to, (id) => choose({ from: id === from ? to : from, to: id }))}
  </div>`;
}

function select(label: string, { surveys }: Inspection, chosen: string, choose: (id: string) => void) {
  return html`<label>
    <span class="label">${label}</span>
    <select
      aria-label=${label}
      @change=${({ target }: Event) => {
        if (target instanceof HTMLSelectElement) choose(target.value);
      }}
    >
      ${surveysByDate(surveys)
        .filter(hasReadings)
        .map(
          (survey) => html`<option value=${survey.id} .selected=${survey.id === chosen}>
            ${surveyName(survey)} (${survey.id})
          </option>`,
        )}
    </select>
  </label>`;
}
