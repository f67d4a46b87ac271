import { ACTIONS, type Action } from "../../../analysis/assessment.ts";
import { html } from "../../markup.ts";
import { actionWords } from "../../outsidePlay.ts";
import { capitalised, chanceWords } from "../../words.ts";
import type { SectionMaker } from "../reported.ts";

/** How sure each step is, from least to most work, as bars with words. */
export const chances: SectionMaker = ({ assessment }) => {
  const { chances: shares, likeliest } = assessment;
  if (shares === null) return null;
  const bar = (action: Action) => html`<li class="${action === likeliest ? "likeliest" : ""}">
<span>${capitalised(actionWords(action, assessment))}</span><span>${chanceWords(shares[action])}</span>
<span class="track"><span class="bar" style="width:${(shares[action] * 100).toFixed(1)}%"></span></span></li>`;
  return {
    title: "How sure this is",
    whole: true,
    content: html`<ul class="chances">${ACTIONS.map(bar)}</ul>`,
  };
};
