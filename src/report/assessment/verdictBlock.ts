import type { Assessment, Verdict } from "../../analysis/assessment.ts";
import type { Lengths } from "../../inspection/lengths.ts";
import { withUnits } from "../document/pieces.ts";
import { html, type Markup } from "../markup.ts";
import { summaryOf } from "../summary.ts";
import { verdictTitle } from "../verdictTitle.ts";

/** The part of the slide that a verdict is about. */
const ABOUT: Readonly<Record<Verdict, "good" | "nut" | "screw" | "open">> = {
  "leave-alone": "good",
  "correct-end-float": "nut",
  "adjust-nut": "nut",
  "replace-nuts": "nut",
  "remake-screw": "screw",
  "measure-more": "open",
  "no-verdict": "screw",
};

/** The verdict in a few words, and in a few sentences with its numbers. */
export function verdictBlock(assessment: Assessment, lengths: Lengths): Markup {
  return html`<div class="verdict ${ABOUT[assessment.verdict]}"><p class="kicker">Verdict</p>
<h2>${verdictTitle(assessment)}</h2>
<p>${withUnits(summaryOf(assessment, lengths))}</p></div>`;
}
