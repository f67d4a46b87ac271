import type { AssessedSurvey } from "../assess.ts";
import type { Assessment, Conformance, Estimate } from "../assessment.ts";

/** What was done to a slide between two surveys, as far as events and stages tell. */
export type Done = "adjusted" | "parts-replaced" | "repaired";

/** Why acceptance was held back though the numbers would have allowed it. */
export type Withheld = "coverage" | "checks" | "spring-loaded";

/** Whether lost motion over the working range keeps the limit, by the later survey. */
export interface Acceptance {
  readonly conformance: Conformance;
  /** What stood against a claim; null where nothing but the numbers decided. */
  readonly withheld: Withheld | null;
  readonly limit: number;
  /** Greatest lost motion over the working range, the indicator's error included. */
  readonly greatest: Estimate;
  /** Chance that the limit is kept. */
  readonly chance: number;
}

/** A change of lost motion at a place. */
export interface ChangePoint {
  readonly position: number;
  readonly change: number;
  readonly low: number;
  readonly high: number;
}

/** Changes are the later survey's quantity less the earlier's, in millimetres: negative where it has become less. */
export interface Change {
  readonly uniform: Estimate;
  readonly uneven: Estimate;
  readonly greatest: Estimate;
  /** Null where it was not measured both times. */
  readonly endFloat: Estimate | null;
  /** The uniform part without the end float: what changed in nut and screw. Null where end float was not measured. */
  readonly uniformLessEndFloat: Estimate | null;
}

/** One of the two surveys, with its assessment. */
export interface ComparedSurvey {
  readonly id: string;
  readonly taken: string;
  readonly stage: AssessedSurvey["survey"]["stage"];
  readonly assessment: Assessment;
}

/** Two surveys of one slide against each other. Every length is in millimetres. */
export interface Comparison {
  readonly from: ComparedSurvey;
  readonly to: ComparedSurvey;
  readonly done: Done | null;
  readonly change: Change;
  /** Change along the travel, with its pointwise 95 % band. */
  readonly difference: readonly ChangePoint[];
  /** Whether one and the same change all along the travel lies within the band everywhere. */
  readonly sameEverywhere: boolean;
  readonly acceptance: Acceptance;
  /** What the reader should know of how the two were made comparable, in sentences. */
  readonly notes: readonly string[];
  /** The coarser of the two graduations. */
  readonly resolution: number;
}
