import { numberRows } from "../../../report/numberRows.ts";
import type { EvidencePartMaker } from "./evidencePart.ts";
import { quantities } from "./quantities.ts";

/** The numbers that the verdict rests on, what repairs would leave and where the screw has worn among them. */
export const numbers: EvidencePartMaker = ({ assessment, lengths, isReady }) => {
  if (!isReady) return null;
  return { title: "The numbers", isOpen: false, content: quantities(numberRows(assessment, lengths)) };
};
