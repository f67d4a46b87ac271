import type { Assessment } from "../../analysis/assessment.ts";
import type { Lengths } from "../../inspection/lengths.ts";
import type { Slide } from "../../inspection/schema.ts";
import type { Part } from "../blocks.ts";

/** What the evidence is drawn from. */
export interface Assessed {
  readonly assessment: Assessment;
  readonly slide: Slide;
  readonly lengths: Lengths;
}

/** Makes a part of what stands behind a verdict, or null where there is nothing to report. */
export type EvidencePart = (assessed: Assessed) => Part | null;
