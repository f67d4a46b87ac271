import { comparisonPicture } from "../../../picture/comparison/comparisonPicture.ts";
import { comparisonSvg } from "../../../picture/comparison/comparisonSvg.ts";
import { figure } from "../../document/pieces.ts";
import type { ComparisonSectionMaker } from "../reportedComparison.ts";

/** Both profiles, and the difference of the two under them, drawn. */
export const profiles: ComparisonSectionMaker = ({ comparison, inspection }) => ({
  title: "Lost motion along the travel, before and after",
  as: "drawing",
  content: figure(
    comparisonSvg(comparisonPicture(comparison, inspection.slide.units)),
    "Above, both profiles with their readings and 95 % bands, the earlier one dashed; below, what has changed.",
  ),
});
