import { slideAndMachine } from "../../assessment/sections/slideAndMachine.ts";
import type { ComparisonSectionMaker } from "../reportedComparison.ts";

/** The slide, as it is decided by. */
export const slide: ComparisonSectionMaker = ({ to }) => slideAndMachine(to);
