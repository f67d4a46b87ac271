import { runningInPicture } from "../../../picture/runningIn/runningInPicture.ts";
import { runningInSvg } from "../../../picture/runningIn/runningInSvg.ts";
import { figure, table, withUnits } from "../../document/pieces.ts";
import { html } from "../../markup.ts";
import { estimateWords } from "../../words.ts";
import type { ComparisonSectionMaker } from "../reportedComparison.ts";
import { runningInSummary, timeWords, tooLittleWords } from "../runningInSummary.ts";

/** How the uniform part has grown since the last repair, and where that leads; or that it is too early to tell. */
export const runningIn: ComparisonSectionMaker = ({ history, inspection, lengths }) => {
  if (!("trend" in history)) {
    return history.surveys < 2
      ? null
      : { title: "Running in", as: "whole", content: html`<p>${tooLittleWords(history)}</p>` };
  }
  const { by, surveys } = history;
  return {
    title: "Running in",
    content: [
      html`<p>${withUnits(runningInSummary(history, lengths))}</p>`,
      html`<div class="drawing">${figure(runningInSvg(runningInPicture(history, inspection.slide.units)))}</div>`,
      table(
        [
          { name: by === "date" ? "Date" : "Hours of use", holds: "words" },
          { name: "Survey", holds: "words" },
          { name: "Uniform part", holds: "words" },
        ],
        surveys.map(({ at, survey, uniform }) => ({
          cells: [timeWords(at, by), survey, estimateWords(uniform, lengths)],
        })),
      ),
    ],
  };
};
