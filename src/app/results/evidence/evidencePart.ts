import type { TemplateResult } from "lit";
import type { Assessment } from "../../../analysis/assessment.ts";
import type { Lengths } from "../../../inspection/lengths.ts";
import type { Slide } from "../../../inspection/schema.ts";

/** What the parts are made from. */
export interface Evidence {
  readonly assessment: Assessment;
  readonly slide: Slide;
  readonly lengths: Lengths;
  /** Whether there are stations enough to speak of a verdict. */
  readonly isReady: boolean;
}

/** One part of what a verdict rests on, opened on asking. */
export interface EvidencePart {
  readonly title: string;
  readonly content: TemplateResult;
  /** Whether it is open from the start. */
  readonly isOpen: boolean;
}

/** Makes a part, or null where there is nothing to tell. */
export type EvidencePartMaker = (basis: Evidence) => EvidencePart | null;
