import { html } from "lit";
import type { Assessment } from "../../../analysis/assessment.ts";
import type { SmallestLimit } from "../../../analysis/decide/smallestLimits.ts";
import type { Lengths } from "../../../inspection/lengths.ts";
import { fromMillimetres } from "../../../inspection/units.ts";
import { wideAxis } from "../../../picture/axis.ts";
import { actionWords } from "../../../report/outsidePlay.ts";
import { keptLimit, smallestLimitWords } from "../../../report/smallestLimitWords.ts";
import { capitalised } from "../../../report/words.ts";

/** The longest bar is so many times as long as to the greatest figure on it. */
const ROOM = 1.15;
const TICKS = 4;

/** Which limits each step keeps: a bar from the smallest of them on, and the limit across them all. */
export function limitChart(limits: readonly SmallestLimit[], assessment: Assessment, lengths: Lengths) {
  const { limit } = assessment.settings;
  const inUnits = (millimetres: number): number => fromMillimetres(millimetres, lengths.units);
  const greatest = Math.max(limit, ...limits.map(({ sure }) => sure));
  const { to, ticks } = wideAxis("", 0, inUnits(greatest * ROOM), TICKS);
  const share = (value: number): string => `${((100 * value) / to).toFixed(2)}%`;
  const at = (millimetres: number): string => share(inUnits(millimetres));
  return html`<figure class="limits" style=${`--limit-at:${at(limit)}`}>
    <figcaption>Which limit each step keeps</figcaption>
    <p>${smallestLimitWords(limits, assessment, lengths)}</p>
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
