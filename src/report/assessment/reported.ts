import type { Assessment } from "../../analysis/assessment.ts";
import type { Lengths } from "../../inspection/lengths.ts";
import type { Inspection, Slide, Survey } from "../../inspection/schema.ts";
import type { Section } from "../document/pieces.ts";

/** The data of a report. */
export interface Reported {
  readonly inspection: Inspection;
  readonly slide: Slide;
  readonly survey: Survey;
  readonly assessment: Assessment;
  readonly lengths: Lengths;
}

/** Makes a section of the report, or null where there is nothing to report. */
export type SectionMaker = (reported: Reported) => Section | null;
