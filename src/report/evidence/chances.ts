import { ACTIONS } from "../../analysis/assessment.ts";
import { actionWords } from "../outsidePlay.ts";
import { capitalised, chanceWords } from "../words.ts";
import type { EvidencePart } from "./evidence.ts";

/** The chance of each step, from least to most work; null where no verdict may be given. */
export const chances: EvidencePart = ({ assessment }) => {
  const { chances: shares, likeliest } = assessment;
  if (shares === null) return null;
  const bars = ACTIONS.map((action) => ({
    name: capitalised(actionWords(action, assessment)),
    words: chanceWords(shares[action]),
    share: shares[action],
    isLikeliest: action === likeliest,
  }));
  return { title: "How sure each step is", blocks: [{ kind: "bars", bars }] };
};
