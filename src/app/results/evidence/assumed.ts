import type { EvidencePartMaker } from "./evidencePart.ts";
import { lines } from "./lines.ts";

/** What was taken for what nobody stated. */
export const assumed: EvidencePartMaker = ({ assessment }) => {
  const sentences = assessment.assumed;
  if (sentences.length === 0) return null;
  return { title: `Assumed (${sentences.length})`, isOpen: false, content: lines(sentences) };
};
