import { html, nothing } from "lit";
import type { RunningIn, TooFewSurveys } from "../../analysis/runningIn/runningIn.ts";
import { hasReadings } from "../../analysis/surveysByDate.ts";
import { lengthsIn } from "../../inspection/lengths.ts";
import type { Inspection } from "../../inspection/schema.ts";
import type { Units } from "../../inspection/units.ts";
import { runningInSummary, timeWords, tooLittleWords } from "../../report/comparison/runningInSummary.ts";
import { estimateWords } from "../../report/words.ts";
import { trend } from "./pictures.ts";

/** A slide with fewer surveys than this is not asked how it runs in. */
const LEAST_SURVEYS = 3;

/** How the uniform part has grown since the last repair, and when to look again; or that it is too early to tell. */
export function runningIn(history: RunningIn | TooFewSurveys, units: Units, { surveys }: Inspection) {
  if (!("trend" in history)) {
    if (surveys.filter(hasReadings).length < LEAST_SURVEYS) return nothing;
    return html`<section>
      <h3>Running in</h3>
      <p>${tooLittleWords(history)}</p>
    </section>`;
  }
  const lengths = lengthsIn(units, history.resolution);
  const { by } = history;
  return html`<section class="running-in">
    <h3>Running in</h3>
    <p>${runningInSummary(history, lengths)}</p>
    ${trend(history, units)}
    <details>
      <summary>Running in, as a table</summary>
      <table class="figures">
        <caption class="unseen">The uniform part, survey by survey</caption>
        <thead>
          <tr>
            <th scope="col">${by === "date" ? "Date" : "Hours of use"}</th>
            <th scope="col">Survey</th>
            <th scope="col">Uniform part</th>
          </tr>
        </thead>
        <tbody>
          ${history.surveys.map(
            ({ at, survey, uniform }) => html`<tr>
              <th scope="row">${timeWords(at, by)}</th>
              <td>${survey}</td>
              <td>${estimateWords(uniform, lengths)}</td>
            </tr>`,
          )}
        </tbody>
      </table>
    </details>
  </section>`;
}
