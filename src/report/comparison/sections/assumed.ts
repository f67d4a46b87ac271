import { lines } from "../../document/pieces.ts";
import type { ComparisonSectionMaker } from "../reportedComparison.ts";

/** What was taken for what nobody stated. */
export const assumed: ComparisonSectionMaker = ({ assumed }) =>
  assumed.length === 0 ? null : { title: "Assumed", content: lines(assumed) };
