import type { Assessment, Estimate } from "../analysis/assessment.ts";
import type { Lengths } from "../inspection/lengths.ts";
import { evennessOf } from "../picture/evenness.ts";
import { chanceWords, estimateWords } from "./words.ts";

type Row = readonly [string, string];

/** The numbers that the verdict rests on by name, each with its interval. */
export function numberRows(assessment: Assessment, lengths: Lengths): readonly Row[] {
  const { settings, uniform, uneven, greatest, endFloat, drivePlay, repeatability } = assessment;
  return [
    ["Limit", `${lengths.position(settings.limit)}; keeping it is ${assessment.conformance}`],
    ["Greatest lost motion", estimateWords(greatest, lengths)],
    ["Uniform part of it", estimateWords(uniform, lengths)],
    ["Uneven part of it", estimateWords(uneven, lengths)],
    ["Chance that it is uneven", chanceWords(assessment.unevenChance)],
    ["End float", endFloat === null ? "not measured" : estimateWords(endFloat, lengths)],
    ...(drivePlay > 0 ? [["Drive play", lengths.lostMotion(drivePlay)] as const] : []),
    inTheNut(assessment, lengths),
    ...left(assessment, lengths),
    ...assessment.wornZones.map(
      ({ from, to, atLeast, deepest, thicknessLeft }): Row => [
        "Screw worn",
        `by at least ${lengths.lostMotion(atLeast)} from about ${lengths.spot(from)} to ${lengths.spot(to)}, at the deepest by at least ${estimateWords(deepest, lengths)}${thicknessWords(thicknessLeft)}`,
      ],
    ),
    ["Repeatability of a reading", `${lengths.position(repeatability)}, one standard deviation`],
  ];
}

/** To whole per cent, and never more than is sure: the share cannot be known better than the thread's first shape. */
function thicknessWords(left: Estimate | null): string {
  if (left === null) return "";
  return `; ${Math.ceil(100 * left.value)} % of the thread's thickness is left there at most`;
}

/** What a nut can take up, as far as it has anything left; of one that cannot be adjusted, the clearance that it has. */
function inTheNut({ settings, takeUp }: Assessment, lengths: Lengths): Row {
  if (settings.adjustable) {
    if (takeUp.value > settings.takeUpLeft)
      return ["Nut can take up", `${lengths.position(settings.takeUpLeft)}, all that it has left`];
    return ["Nut can take up", takeUp.value > 0 ? estimateWords(takeUp, lengths) : "nothing"];
  }
  const clearance: Estimate = {
    value: takeUp.value + settings.runningClearance,
    low: takeUp.low + settings.runningClearance,
    high: takeUp.high + settings.runningClearance,
  };
  return ["Clearance in the nut", clearance.value > 0 ? estimateWords(clearance, lengths) : "none"];
}

/** What adjusting would leave, and what new nuts would where that is another matter. */
function left(assessment: Assessment, lengths: Lengths): readonly Row[] {
  const { settings, afterAdjusting, afterNewNuts } = assessment;
  const words = ({ worst, position }: Assessment["afterNewNuts"]): string =>
    evennessOf(assessment, lengths) === "uneven"
      ? `${estimateWords(worst, lengths)}, at about ${lengths.spot(position)}`
      : estimateWords(worst, lengths);
  const adjusting: Row = ["Left after adjusting, at worst", words(afterAdjusting)];
  const newNuts: Row = ["Left with new nuts, at worst", words(afterNewNuts)];
  if (!settings.adjustable) return [newNuts];
  return words(afterAdjusting) === words(afterNewNuts) ? [adjusting] : [adjusting, newNuts];
}
