import { css, html } from "lit";
import type { Assessment, Estimate } from "../../analysis/assessment.ts";
import type { Lengths } from "../../inspection/lengths.ts";
import { withTolerance } from "../../report/words.ts";

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
  readonly value: number;
  /** Half of the 95 % interval. */
  readonly tolerance: number;
}

/** The figures that the verdict rests on, each with how far it may be out. The first two make up the third. */
export function keyFigures(assessment: Assessment, lengths: Lengths) {
  const { verdict, uniform, uneven, loosestSpot, uncertainty, afterAdjusting, settings } = assessment;
  const half = ({ value, low, high }: Estimate): number => Math.max(high - value, value - low);
  const figures: readonly KeyFigure[] = [
    { term: "Uniform part", value: uniform.value, tolerance: half(uniform) },
    { term: "Uneven part", value: uneven.value, tolerance: half(uneven) },
    {
      term: `Greatest, at ${lengths.spot(loosestSpot.position)}`,
      value: loosestSpot.backlash,
      tolerance: uncertainty.expanded,
    },
    ...(verdict === "leave-alone" || verdict === "correct-end-float"
      ? []
      : [
          {
            term: settings.adjustable ? "Left after adjusting" : "Left with new nuts",
            value: afterAdjusting.worst.value,
            tolerance: half(afterAdjusting.worst),
          },
        ]),
  ];
  return html`<dl class="key">
    ${figures.map(({ term, value, tolerance }) => {
      const [amount, range] = withTolerance(value, tolerance, lengths).split(", ");
      return html`<div>
        <dt>${term}</dt>
        <dd class="value">${amount}</dd>
        <dd class="range">${range}</dd>
      </div>`;
    })}
  </dl>`;
}
