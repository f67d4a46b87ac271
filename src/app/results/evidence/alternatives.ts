import { alternativesOf } from "../../../report/alternatives.ts";
import type { EvidencePartMaker } from "./evidencePart.ts";
import { lines } from "./lines.ts";

/** What could be done instead of remaking the screw. */
export const alternatives: EvidencePartMaker = ({ assessment, slide }) => {
  const sentences = alternativesOf(assessment, slide);
  if (sentences.length === 0) return null;
  return { title: "What else could be done", isOpen: false, content: lines(sentences) };
};
