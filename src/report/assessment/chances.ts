import { ACTIONS, type Action, type Assessment } from "../../analysis/assessment.ts";
import { html, type Markup } from "../markup.ts";
import { actionWords } from "../outsidePlay.ts";
import { capitalised, chanceWords } from "../words.ts";

/** How sure each step is, from least to most work, as bars with words; nothing where no verdict may be given. */
export function chances(assessment: Assessment): readonly Markup[] {
  const { chances: shares, likeliest } = assessment;
  if (shares === null) return [];
  const bar = (action: Action): Markup => html`<li class="${action === likeliest ? "likeliest" : ""}">
<span>${capitalised(actionWords(action, assessment))}</span> <span>${chanceWords(shares[action])}</span>
<span class="track"><span class="bar" style="width:${(shares[action] * 100).toFixed(1)}%"></span></span></li>`;
  return [html`<ul class="chances" aria-label="How sure each step is">${ACTIONS.map(bar)}</ul>`];
}
