import { lines } from "../../document/pieces.ts";
import type { ComparisonSectionMaker } from "../reportedComparison.ts";

/** What the reader should know of how the two surveys were made comparable. */
export const madeComparable: ComparisonSectionMaker = ({ comparison }) =>
  comparison.notes.length === 0
    ? null
    : { title: "How the surveys were made comparable", as: "whole", content: lines(comparison.notes) };
