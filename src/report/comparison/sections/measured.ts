import type { Assessment } from "../../../analysis/assessment.ts";
import { surveyFacts, surveyTable } from "../../assessment/sections/measured.ts";
import { html } from "../../markup.ts";
import { verdictTitle } from "../../summary.ts";
import type { ComparisonSectionMaker } from "./reported.ts";

/** How the readings of both surveys were taken, with the verdict on each alone, and all surveys of the slide. */
export const measured: ComparisonSectionMaker = ({ from, to, inspection }) => {
  const verdict = (assessment: Assessment) =>
    html`<p>Verdict on it by itself: ${verdictTitle(assessment)}.</p>`;
  const notes = new Map([
    [from.survey.id, "before"],
    [to.survey.id, "after"],
  ]);
  return {
    title: "How it was measured",
    content: [
      html`<div class="whole"><h3>Before</h3>${surveyFacts(from)}${verdict(from.assessment)}</div>`,
      html`<div class="whole"><h3>After</h3>${surveyFacts(to)}${verdict(to.assessment)}</div>`,
      html`<div class="whole">${surveyTable(inspection, ({ id }) => notes.get(id) ?? "")}</div>`,
    ],
  };
};
