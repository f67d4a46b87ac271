import type { Lengths } from "../../inspection/lengths.ts";
import type { Reported } from "../assessment/reported.ts";
import type { Section } from "../document/pieces.ts";
import type { Compared } from "./compared.ts";

/** What the report on two surveys tells of. */
export interface ReportedComparison extends Compared {
  /** To the coarser of the two graduations. */
  readonly lengths: Lengths;
  readonly from: Reported;
  readonly to: Reported;
}

/** Makes a section of the report on two surveys, or null where there is nothing to tell. */
export type ComparisonSectionMaker = (reported: ReportedComparison) => Section | null;
