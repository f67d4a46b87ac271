import { html } from "lit";
import { ACTIONS } from "../../../analysis/assessment.ts";
import { actionWords } from "../../../report/outsidePlay.ts";
import { capitalised, chanceWords } from "../../../report/words.ts";
import type { EvidencePartMaker } from "./evidencePart.ts";

/** How sure each way forward is, from least to most work. */
export const chances: EvidencePartMaker = ({ assessment, isReady }) => {
  const { chances: shares, likeliest } = assessment;
  if (shares === null || !isReady) return null;
  return {
    title: "How sure this is",
    isOpen: true,
    content: html`<ul class="chances">
      ${ACTIONS.map(
        (action) => html`<li class=${action === likeliest ? "likeliest" : ""}>
          <span>${capitalised(actionWords(action, assessment))}</span>
          <span class="words">${chanceWords(shares[action])}</span>
          <span class="bar"><i style=${`width:${(shares[action] * 100).toFixed(1)}%`}></i></span>
        </li>`,
      )}
    </ul>`,
  };
};
