import { comparisonPicture } from "../../picture/comparison/comparisonPicture.ts";
import { comparisonSvg } from "../../picture/comparison/comparisonSvg.ts";
import { sentenceList } from "../blocks.ts";
import { alongTheTravel } from "./alongTheTravel.ts";
import type { ComparisonPart } from "./compared.ts";
import { figures } from "./figures.ts";
import { runningIn } from "./runningIn.ts";

/** Both profiles and their difference, drawn. */
const profiles: ComparisonPart = ({ comparison, inspection }) => {
  const picture = comparisonPicture(comparison, inspection.slide.units);
  return {
    title: "Lost motion along the travel, before and after",
    blocks: [
      {
        kind: "picture",
        title: picture.title,
        svg: (setting) => comparisonSvg(picture, setting),
        caption:
          "Above, both profiles with their readings and 95 % bands, the earlier one dashed; below, what has changed.",
      },
    ],
  };
};

/** What the reader should know of how the two surveys were made comparable. */
const madeComparable: ComparisonPart = ({ comparison: { notes } }) =>
  notes.length === 0
    ? null
    : { title: "How the surveys were made comparable", blocks: [sentenceList(notes)] };

/** The defaults and overrides used where the inspection states nothing. */
const assumed: ComparisonPart = ({ assumed }) =>
  assumed.length === 0 ? null : { title: "Assumed", blocks: [sentenceList(assumed)] };

/** The parts of a comparison. Page and terminal show them in this order, the report with its own among them. */
export const COMPARISON_PARTS = {
  profiles,
  figures,
  alongTheTravel,
  runningIn,
  madeComparable,
  assumed,
} as const;
