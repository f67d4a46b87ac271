import type { Action, Assessment } from "../analysis/assessment.ts";
import type { Lengths } from "../inspection/lengths.ts";
import { ACTION_WORDS, capitalised, estimateWords } from "./words.ts";

/** The parts of lost motion outside nut and screw; no nut removes them. */
export type OutsidePlay = "end float" | "drive play";

const DRIVE_PLAY = "(key, pin or gears between wheel and screw)";

/**
 * The parts that are larger than need be: end float where it exceeds the attainable end float by more than its
 * standard uncertainty, a quarter of the 95 % interval; drive play where it exceeds half the resolution.
 */
export function excessPlay({
  endFloat,
  drivePlay,
  settings,
  resolution,
}: Assessment): readonly OutsidePlay[] {
  const excess: OutsidePlay[] = [];
  if (endFloat !== null) {
    const standard = (endFloat.high - endFloat.low) / 4;
    if (endFloat.value - standard > settings.endFloatAttainable) excess.push("end float");
  }
  if (drivePlay > resolution / 2) excess.push("drive play");
  return excess;
}

/** The parts to correct before nut or screw; none where the verdict touches neither. */
export function correctedFirst(assessment: Assessment): readonly OutsidePlay[] {
  const { verdict } = assessment;
  const touchesParts = verdict === "adjust-nut" || verdict === "replace-nuts" || verdict === "remake-screw";
  return touchesParts ? excessPlay(assessment) : [];
}

/** An action as an instruction. "correct-end-float" also covers drive play, so it names what there is to correct. */
export function actionWords(action: Action, assessment: Assessment): string {
  const excess = action === "correct-end-float" ? excessPlay(assessment) : [];
  return excess.length === 0 ? ACTION_WORDS[action] : `correct the ${excess.join(" and the ")}`;
}

/** The step before nut or screw as a sentence; none where there is no such step. */
export function firstStep(assessment: Assessment, lengths: Lengths): readonly string[] {
  const { endFloat, drivePlay, settings } = assessment;
  const steps = correctedFirst(assessment).map((play) =>
    play === "end float" && endFloat !== null
      ? `bring the end float of ${estimateWords(endFloat, lengths)}, down to ${lengths.position(settings.endFloatAttainable)} at the thrust bearing`
      : `take out the drive play of ${lengths.lostMotion(drivePlay)} ${DRIVE_PLAY}`,
  );
  if (steps.length === 0) return [];
  return [`First ${steps.join(", and ")}; no nut removes ${steps.length === 1 ? "it" : "them"}.`];
}

/** How much of lost motion is end float and drive play, and that correcting them is enough. */
export function enoughToCorrect(assessment: Assessment, lengths: Lengths): readonly string[] {
  const { endFloat, drivePlay, settings } = assessment;
  const excess = excessPlay(assessment);
  const withDrive = excess.includes("drive play");
  const shares = [
    ...(withDrive ? [`${lengths.lostMotion(drivePlay)} is drive play ${DRIVE_PLAY}`] : []),
    ...(endFloat === null
      ? []
      : [`${estimateWords(endFloat, lengths)}, is end float of the screw in its thrust bearing`]),
  ];
  const steps = [
    ...(excess.includes("end float") || !withDrive
      ? [`bring the end float down to ${lengths.position(settings.endFloatAttainable)} at the thrust bearing`]
      : []),
    ...(withDrive ? ["take the play out of the drive"] : []),
  ];
  return [
    ...(shares.length === 0 ? [] : [`Of that, ${shares.join(" and ")}.`]),
    `${capitalised(steps.join(" and "))}, and the slide comes within the limit; leave the nut as it is.`,
  ];
}

/** End float to correct when convenient, because the limit is kept all the same. */
export function whenConvenient(assessment: Assessment, lengths: Lengths): readonly string[] {
  const { endFloat, settings } = assessment;
  if (endFloat === null || !excessPlay(assessment).includes("end float")) return [];
  return [
    `The end float is ${estimateWords(endFloat, lengths)}; a bearing in order has ${lengths.position(settings.endFloatAttainable)}: correct it when convenient.`,
  ];
}
