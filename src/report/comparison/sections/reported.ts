import type { Reported } from "../../assessment/reported.ts";
import type { Section } from "../../document/pieces.ts";
import type { Compared } from "../compared.ts";

/** The comparison, with each survey's report data. */
export interface ReportedComparison extends Compared {
  readonly from: Reported;
  readonly to: Reported;
}

/** Makes a section of the report on two surveys, or null where there is nothing to report. */
export type ComparisonSectionMaker = (reported: ReportedComparison) => Section | null;
