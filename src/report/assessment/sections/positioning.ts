import { facts } from "../../document/facts.ts";
import { positioningRows } from "../../positioning.ts";
import type { SectionMaker } from "../reported.ts";

/** What ISO 230-2 makes of readings of positions. */
export const positioning: SectionMaker = ({ assessment, lengths }) => {
  const found = assessment.positioning;
  if (found === undefined) return null;
  return {
    title: `Positioning, after ISO 230-2${found.correctedTo20 ? ", at 20 °C" : ""}`,
    content: facts(positioningRows(found, lengths)),
  };
};
