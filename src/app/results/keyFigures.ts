import { html } from "lit";
import type { Assessment, Estimate } from "../../analysis/assessment.ts";
import "../help/aboutLink.ts";
import type { Lengths } from "../../inspection/lengths.ts";
import { evennessOf } from "../../picture/evenness.ts";
import { intervalWords } from "../../report/words.ts";
import type { Topic } from "../help/topics.ts";

interface KeyFigure {
  readonly term: string;
  readonly about: Topic;
  readonly estimate: Estimate;
}

/** The figures that the verdict rests on, each with its interval. The first two add up to the third. */
export function keyFigures(assessment: Assessment, lengths: Lengths) {
  const { verdict, uniform, uneven, greatest } = assessment;
  const figures: readonly KeyFigure[] = [
    { term: "Uniform part", about: "uniform-uneven", estimate: uniform },
    { term: "Uneven part", about: "uniform-uneven", estimate: uneven },
    { term: greatestTerm(assessment, lengths), about: "backlash", estimate: greatest },
    ...(verdict === "leave-alone" || verdict === "correct-end-float" ? [] : [left(assessment)]),
  ];
  return html`<dl class="key">
    ${figures.map(
      ({ term, about, estimate }) => html`<div>
        <dt>${term}</dt>
        <dd class="value">${lengths.lostMotion(estimate.value)}</dd>
        <dd class="range">${intervalWords(estimate, lengths)}</dd>
        <dd class="about screen-only"><tightspot-about .topic=${about}></tightspot-about></dd>
      </div>`,
    )}
  </dl>`;
}

/** Names the loosest spot only if the readings show that there is one. */
function greatestTerm(assessment: Assessment, lengths: Lengths): string {
  if (evennessOf(assessment, lengths) !== "uneven") return "Greatest";
  return `Greatest, at ${lengths.spot(assessment.loosestSpot.position)}`;
}

/** The greatest lost motion after the repair that this nut allows. */
function left({ verdict, settings, afterAdjusting, afterNewNuts }: Assessment): KeyFigure {
  return settings.adjustable && verdict !== "replace-nuts"
    ? { term: "Left after adjusting", about: "take-up", estimate: afterAdjusting.worst }
    : { term: "Left with new nuts", about: "running-clearance", estimate: afterNewNuts.worst };
}
