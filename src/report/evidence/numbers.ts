import type { Assessment, Estimate, Spot } from "../../analysis/assessment.ts";
import type { Lengths } from "../../inspection/lengths.ts";
import { evennessOf } from "../../picture/evenness.ts";
import type { Fact } from "../blocks.ts";
import { chanceWords, conformanceWords, estimateWords } from "../words.ts";
import type { EvidencePart } from "./evidence.ts";

/** The numbers that the verdict rests on, each with its interval, and the places that they belong to. */
export const numbers: EvidencePart = ({ assessment, lengths }) => ({
  title: "The numbers",
  blocks: [{ kind: "facts", rows: rowsOf(assessment, lengths) }],
});

function rowsOf(assessment: Assessment, lengths: Lengths): readonly Fact[] {
  const { settings, uniform, uneven, greatest, endFloat, drivePlay, repeatability } = assessment;
  return [
    ["Limit", `${lengths.position(settings.limit)}; ${conformanceWords(assessment.conformance)}`],
    ["Greatest lost motion", estimateWords(greatest, lengths)],
    ["Uniform part of it", estimateWords(uniform, lengths)],
    ["Uneven part of it", estimateWords(uneven, lengths)],
    ["Chance that it is uneven", chanceWords(assessment.unevenChance)],
    ["End float", endFloat === null ? "not measured" : estimateWords(endFloat, lengths)],
    ...(drivePlay > 0 ? [["Drive play", lengths.lostMotion(drivePlay)] as const] : []),
    inTheNut(assessment, lengths),
    ...left(assessment, lengths),
    ...spots(assessment, lengths),
    ...wear(assessment, lengths),
    ["Repeatability of a reading", `${lengths.position(repeatability)}, one standard deviation`],
  ];
}

/** Tight and loosest spot, where the readings show that there are such places. */
function spots(assessment: Assessment, lengths: Lengths): readonly Fact[] {
  if (evennessOf(assessment, lengths) !== "uneven") {
    return [
      [
        "Tight and loosest spot",
        "none named: the readings do not show that lost motion differs along the travel",
      ],
    ];
  }
  const words = ({ position, backlash }: Spot): string =>
    `${lengths.lostMotion(backlash)} at about ${lengths.spot(position)}`;
  return [
    ["Tight spot", words(assessment.tightSpot)],
    ["Loosest spot", words(assessment.loosestSpot)],
  ];
}

function wear({ wornZones }: Assessment, lengths: Lengths): readonly Fact[] {
  if (wornZones.length === 0) return [["Screw worn", "nowhere that these readings show"]];
  return wornZones.map(({ from, to, atLeast, deepest, thicknessLeft }) => [
    "Screw worn",
    `by at least ${lengths.lostMotion(atLeast)} from about ${lengths.spot(from)} to ${lengths.spot(to)}, at the deepest by at least ${estimateWords(deepest, lengths)}${thicknessWords(thicknessLeft)}`,
  ]);
}

/** In whole per cent, rounded up: the share cannot be known better than the thread's first shape. */
function thicknessWords(left: Estimate | null): string {
  if (left === null) return "";
  return `; ${Math.ceil(100 * left.value)} % of the thread's thickness is left there at most`;
}

/** What the nut can take up, at most what it has left; of a nut that cannot be adjusted, its clearance. */
function inTheNut({ settings, takeUp }: Assessment, lengths: Lengths): Fact {
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

/** What adjusting would leave, and what new nuts would leave where that differs. */
function left(assessment: Assessment, lengths: Lengths): readonly Fact[] {
  const { settings, afterAdjusting, afterNewNuts } = assessment;
  const words = ({ worst, position }: Assessment["afterNewNuts"]): string =>
    evennessOf(assessment, lengths) === "uneven"
      ? `${estimateWords(worst, lengths)}, at about ${lengths.spot(position)}`
      : estimateWords(worst, lengths);
  const adjusting: Fact = ["Left after adjusting, at worst", words(afterAdjusting)];
  const newNuts: Fact = ["Left with new nuts, at worst", words(afterNewNuts)];
  if (!settings.adjustable) return [newNuts];
  return words(afterAdjusting) === words(afterNewNuts) ? [adjusting] : [adjusting, newNuts];
}
