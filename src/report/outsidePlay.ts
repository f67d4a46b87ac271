import type { Action, Assessment } from "../analysis/assessment.ts";
import type { Lengths } from "../inspection/lengths.ts";
import { ACTION_WORDS, capitalised, estimateWords } from "./words.ts";

/** Part of lost motion that neither nut nor screw is to blame for, and that no nut removes. */
export type OutsidePlay = "end float" | "drive play";

const DRIVE_PLAY = "(key, pin or gears between wheel and screw)";

/**
 * What of it is more than it can be set to. End float is where it exceeds what a thrust bearing in order has by more
 * than its own standard uncertainty, a quarter of the 95 % interval; drive play is wherever a reading could show it.
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

/** What of it is corrected before nut or screw are touched; nothing where they are not, or where more is to be read. */
export function correctedFirst(assessment: Assessment): readonly OutsidePlay[] {
  const { verdict } = assessment;
  const touchesParts = verdict === "adjust-nut" || verdict === "replace-nuts" || verdict === "remake-screw";
  return touchesParts ? excessPlay(assessment) : [];
}

/** What is done, as an instruction. Correcting the end float stands for drive play too, so it names what there is. */
export function actionWords(action: Action, assessment: Assessment): string {
  const excess = action === "correct-end-float" ? excessPlay(assessment) : [];
  return excess.length === 0 ? ACTION_WORDS[action] : `correct the ${excess.join(" and the ")}`;
}

/** The step that comes before nut or screw, where there is one. */
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

/** How much of the lost motion it is, and that correcting it is enough. */
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

/** End float that does no harm yet, told last. */
export function whenConvenient(assessment: Assessment, lengths: Lengths): readonly string[] {
  const { endFloat, settings } = assessment;
  if (endFloat === null || !excessPlay(assessment).includes("end float")) return [];
  return [
    `The end float is ${estimateWords(endFloat, lengths)}; a bearing in order has ${lengths.position(settings.endFloatAttainable)}: correct it when convenient.`,
  ];
}
