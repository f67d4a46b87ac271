import { lines } from "./lines.ts";
import type { PartMaker } from "./part.ts";

/** What was taken for what nobody stated. */
export const assumed: PartMaker = ({ assessment }) => {
  const sentences = assessment.assumed;
  if (sentences.length === 0) return null;
  return { title: `Assumed (${sentences.length})`, isOpen: false, content: lines(sentences) };
};
