import type { Assessment } from "../../analysis/assessment.ts";
import { type Lengths, lengthsIn } from "../../inspection/lengths.ts";
import type { Inspection } from "../../inspection/schema.ts";
import { actionWords } from "../outsidePlay.ts";
import { verdictTitle } from "../summary.ts";

/** One slide of an overview: where it was read, and the assessment of the survey that stands for it. */
export interface SlideOverview {
  /** The name that the inspection was read under. */
  readonly file: string;
  readonly inspection: Inspection;
  readonly assessment: Assessment;
}

/** The slide with its machine: `Lathe no. 2, cross slide` as they were given. */
export function calledOf({ inspection: { slide } }: SlideOverview): string {
  return [slide.machine, slide.name].filter((name) => name !== undefined && name !== "").join(": ");
}

/** What is to be done, in a few words: the verdict, with what it looks like so far where there is none yet. */
export function toBeDone({ assessment }: SlideOverview): string {
  const { verdict, likeliest, reasons } = assessment;
  if (verdict === "no-verdict") return `No verdict: ${whyNone(assessment)}`;
  if (verdict !== "measure-more") return verdictTitle(assessment);
  const open = reasons[0] === "at-the-limit" ? "Too close to the limit to call" : "Measure more";
  return likeliest === null ? open : `${open} (likeliest: ${actionWords(likeliest, assessment)})`;
}

/** The date of the survey that stands for the slide. */
export function takenOf({ inspection: { surveys }, assessment }: SlideOverview): string {
  return surveys.find(({ id }) => id === assessment.survey)?.taken ?? "";
}

export function lengthsOf({ inspection, assessment }: SlideOverview): Lengths {
  return lengthsIn(inspection.slide.units, assessment.resolution);
}

function whyNone({ reasons }: Assessment): string {
  if (reasons.includes("holds-load")) return "it holds up a load, have it inspected";
  if (reasons.includes("spring-loaded")) return "a spring hides the nut's wear";
  return "the limit is beyond parts in perfect order";
}
