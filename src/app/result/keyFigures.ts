import { css, html } from "lit";
import type { Assessment, Estimate } from "../../analysis/assessment.ts";
import type { Lengths } from "../../inspection/lengths.ts";
import { evennessOf } from "../../picture/evenness.ts";
import { intervalWords } from "../../report/words.ts";

export const keyFiguresStyle = css`
  .key {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(8.25rem, 1fr));
    gap: 1.5px;
    overflow: hidden;
    border: 1.5px solid var(--rule);
    border-radius: var(--round);
    background: var(--rule);
  }

  .key > div {
    padding: 0.625rem 0.75rem 0.75rem;
    background: var(--sheet);
  }

  .key dt {
    color: var(--ink-pale);
    font-size: var(--small);
  }

  .key .value {
    font-size: var(--figure);
    font-weight: 700;
    line-height: 1.25;
    letter-spacing: -0.01em;
    font-variant-numeric: tabular-nums;
  }

  .key .range {
    color: var(--ink-pale);
    font-size: var(--small);
    font-variant-numeric: tabular-nums;
  }
`;

interface KeyFigure {
  readonly term: string;
  readonly estimate: Estimate;
}

/** The figures that the verdict rests on, each with how far it may be out. The first two make up the third. */
export function keyFigures(assessment: Assessment, lengths: Lengths) {
  const { verdict, uniform, uneven, greatest } = assessment;
  const figures: readonly KeyFigure[] = [
    { term: "Uniform part", estimate: uniform },
    { term: "Uneven part", estimate: uneven },
    { term: greatestTerm(assessment, lengths), estimate: greatest },
    ...(verdict === "leave-alone" || verdict === "correct-end-float" ? [] : [left(assessment)]),
  ];
  return html`<dl class="key">
    ${figures.map(
      ({ term, estimate }) => html`<div>
        <dt>${term}</dt>
        <dd class="value">${lengths.lostMotion(estimate.value)}</dd>
        <dd class="range">${intervalWords(estimate, lengths)}</dd>
      </div>`,
    )}
  </dl>`;
}

/** The place is named only where the readings show that there is one. */
function greatestTerm(assessment: Assessment, lengths: Lengths): string {
  if (evennessOf(assessment, lengths) !== "uneven") return "Greatest";
  return `Greatest, at ${lengths.spot(assessment.loosestSpot.position)}`;
}

/** What the repair leaves that can be made to this nut. */
function left({ verdict, settings, afterAdjusting, afterNewNuts }: Assessment): KeyFigure {
  return settings.adjustable && verdict !== "replace-nuts"
    ? { term: "Left after adjusting", estimate: afterAdjusting.worst }
    : { term: "Left with new nuts", estimate: afterNewNuts.worst };
}
