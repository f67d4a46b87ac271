import { html } from "lit";
import { unsafeHTML } from "lit/directives/unsafe-html.js";
import type { Comparison } from "../../analysis/comparison/comparison.ts";
import type { Lengths } from "../../inspection/lengths.ts";
import { conformanceSign } from "../../picture/conformanceSign.ts";
import { acceptanceTitle } from "../../report/comparison/acceptanceTitle.ts";
import { acceptanceSentence } from "../../report/comparison/summary.ts";
import { inAHundred } from "../../report/words.ts";

/** Whether the limit is kept, by the later survey: a sign, a line, and the sentence with its numbers. */
export function acceptance(comparison: Comparison, lengths: Lengths) {
  const { conformance, chance } = comparison.acceptance;
  return html`<section class="acceptance ${conformance.replace(" ", "-")}" aria-label="Acceptance">
    ${unsafeHTML(conformanceSign(conformance))}
    <h3>${acceptanceTitle(comparison.acceptance, lengths)}</h3>
    <p>${acceptanceSentence(comparison, lengths)} The chance that it is kept: ${inAHundred(chance)}.</p>
  </section>`;
}
