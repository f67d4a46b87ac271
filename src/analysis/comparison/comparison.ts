import type { AssessedSurvey } from "../assess.ts";
import type { Assessment, Conformance, Estimate } from "../assessment.ts";

/** What was done to a slide between two surveys, according to events and stages. */
export type Repair = "adjusted" | "parts-replaced" | "repaired";

/** Why acceptance is withheld although the numbers allow it. */
export type Withheld = "coverage" | "checks" | "spring-loaded";

/** Whether lost motion over the working range is within the limit in the later survey. */
export interface Acceptance {
  readonly conformance: Conformance;
  /** What stands against the claim; null if only the numbers decide. */
  readonly withheld: Withheld | null;
  readonly limit: number;
  /** Greatest lost motion over the working range, the indicator's error included. */
  readonly greatest: Estimate;
  /** Chance that it is within the limit. */
  readonly chance: number;
}

/** A change of lost motion at a place. */
export interface ChangePoint {
  readonly position: number;
  readonly change: number;
  readonly low: number;
  readonly high: number;
}

/** Changes are later minus earlier survey, in millimetres: negative if a quantity has become less. */
export interface Change {
  readonly uniform: Estimate;
  readonly uneven: Estimate;
  readonly greatest: Estimate;
  /** Null if it was not measured both times. */
  readonly endFloat: Estimate | null;
  /** The uniform part without the end float, which is the change in nut and screw. Null if it was not measured. */
  readonly uniformLessEndFloat: Estimate | null;
}

/** One of the two surveys, with its assessment. */
export interface ComparedSurvey {
  readonly id: string;
  readonly taken: string;
  readonly stage: AssessedSurvey["survey"]["stage"];
  readonly assessment: Assessment;
}

/** The comparison of two surveys of one slide. Every length is in millimetres. */
export interface Comparison {
  readonly from: ComparedSurvey;
  readonly to: ComparedSurvey;
  readonly done: Repair | null;
  readonly change: Change;
  /** Change along the travel, with its pointwise 95 % band. */
  readonly difference: readonly ChangePoint[];
  /** Whether one and the same change all along the travel lies within the band everywhere. */
  readonly sameEverywhere: boolean;
  readonly acceptance: Acceptance;
  /** How the two were made comparable, in sentences. */
  readonly notes: readonly string[];
  /** The coarser of the two graduations. */
  readonly resolution: number;
}
