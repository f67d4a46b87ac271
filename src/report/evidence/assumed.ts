import { sentenceList } from "../blocks.ts";
import type { EvidencePart } from "./evidence.ts";

/** The defaults and overrides used where the inspection states nothing. */
export const assumed: EvidencePart = ({ assessment }) =>
  assessment.assumed.length === 0 ? null : { title: "Assumed", blocks: [sentenceList(assessment.assumed)] };
