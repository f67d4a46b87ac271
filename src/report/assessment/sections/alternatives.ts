import { alternativesOf } from "../../alternatives.ts";
import { lines } from "../../document/lines.ts";
import type { SectionMaker } from "../reported.ts";

/** What could be done instead of remaking the screw. */
export const alternatives: SectionMaker = ({ assessment, slide }) => {
  const sentences = alternativesOf(assessment, slide);
  return sentences.length === 0 ? null : { title: "What else could be done", content: lines(sentences) };
};
