import { css, html } from "lit";
import type { Assessment } from "../../../analysis/assessment.ts";
import type { LeastLimit } from "../../../analysis/leastLimits.ts";
import type { Lengths } from "../../../inspection/lengths.ts";
import { fromMillimetres } from "../../../inspection/units.ts";
import { wideAxis } from "../../../picture/axis.ts";
import { keptLimit, leastLimitWords } from "../../../report/leastLimitWords.ts";
import { actionWords } from "../../../report/outsidePlay.ts";
import { capitalised } from "../../../report/words.ts";

/** The longest bar is so many times as long as to the greatest figure on it. */
const ROOM = 1.15;
const TICKS = 4;

/** Which limits each step keeps: a bar from the smallest of them on, and the limit across them all. */
export function limitChart(limits: readonly LeastLimit[], assessment: Assessment, lengths: Lengths) {
  const { limit } = assessment.settings;
  const inUnits = (millimetres: number): number => fromMillimetres(millimetres, lengths.units);
  const greatest = Math.max(limit, ...limits.map(({ sure }) => sure));
  const { to, ticks } = wideAxis("", 0, inUnits(greatest * ROOM), TICKS);
  const share = (value: number): string => `${((100 * value) / to).toFixed(2)}%`;
  const at = (millimetres: number): string => share(inUnits(millimetres));
  return html`<figure class="limits" style=${`--limit-at:${at(limit)}`}>
    <figcaption>Which limit each step keeps</figcaption>
    <p>${leastLimitWords(limits, assessment, lengths)}</p>
    <div class="bars" aria-hidden="true">
      ${limits.map(
        ({ action, possible, sure }) => html`<div class="step ${sure <= limit + 1e-9 ? "kept" : ""}">
          <span>${capitalised(actionWords(action, assessment))}</span>
          <span class="from">${keptLimit(sure, lengths)} or more</span>
          <span class="track">
            <i class="possible" style=${`left:${at(possible)}`}></i>
            <i class="sure" style=${`left:${at(sure)}`}></i>
            <i class="limit"></i>
          </span>
        </div>`,
      )}
      <div class="axis">
        ${ticks.map(({ at: value, label }) => html`<span style=${`left:${share(value)}`}>${label}</span>`)}
      </div>
      <p class="key">
        <span><i class="limit"></i> limit of ${lengths.position(limit)}</span>
        <span><i class="sure"></i> kept, very likely</span>
        <span><i class="possible"></i> may be kept</span>
      </p>
    </div>
  </figure>`;
}

export const limitChartStyle = css`
  .limits,
  .bars {
    display: grid;
    gap: 0.75rem;
  }

  figcaption {
    font-weight: 650;
  }

  .step {
    display: flex;
    flex-wrap: wrap;
    justify-content: space-between;
    gap: 0.125rem 1rem;
  }

  .from,
  .axis,
  .key {
    color: var(--ink-pale);
    font-variant-numeric: tabular-nums;
  }

  .kept > :not(.track) {
    font-weight: 650;
  }

  .track {
    position: relative;
    flex: 1 0 100%;
    height: 1rem;
    background: var(--grid);
  }

  .track i {
    position: absolute;
    inset: 0 0 0 auto;
  }

  .possible {
    background: repeating-linear-gradient(
      -45deg,
      var(--ink) 0 1.5px,
      transparent 1.5px 5px
    );
  }

  .sure {
    background: var(--steel);
  }

  .kept .sure,
  .key .sure {
    background: var(--ink);
  }

  .track .limit {
    inset: -0.25rem auto -0.25rem var(--limit-at);
    border-left: 3px dashed var(--limit);
    outline: 1px solid var(--sheet);
  }

  .axis {
    position: relative;
    height: 1.25rem;
    font-size: var(--small);
  }

  .axis span {
    position: absolute;
    translate: -50%;
  }

  .axis span:first-child {
    translate: 0;
  }

  .axis span:last-child {
    translate: -100%;
  }

  .key {
    display: flex;
    flex-wrap: wrap;
    gap: 0.25rem 1.25rem;
    font-size: var(--small);
  }

  .key span {
    display: inline-flex;
    align-items: center;
    gap: 0.5rem;
  }

  .key i {
    width: 1.25rem;
    height: 0.75rem;
  }

  .key .limit {
    width: 0;
    height: 1.25rem;
    border-left: 3px dashed var(--limit);
  }
`;
