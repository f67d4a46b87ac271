import { positioningRows } from "../../../report/positioning.ts";
import type { EvidencePartMaker } from "./evidencePart.ts";
import { quantities } from "./quantities.ts";

/** What ISO 230-2 makes of readings of positions. */
export const positioning: EvidencePartMaker = ({ assessment, lengths }) => {
  const found = assessment.positioning;
  if (found === undefined) return null;
  return {
    title: `Positioning, after ISO 230-2${found.correctedTo20 ? ", at 20 °C" : ""}`,
    isOpen: true,
    content: quantities(positioningRows(found, lengths)),
  };
};
