import type { Flanks } from "../../analysis/positioning/flanks.ts";
import type { EachWay, Positioning } from "../../analysis/positioning/positioning.ts";
import type { Lengths } from "../../inspection/lengths.ts";
import type { Fact } from "../blocks.ts";
import type { EvidencePart } from "./evidence.ts";

/** The quantities of ISO 230-2; null where the survey holds no positioning readings. */
export const positioning: EvidencePart = ({ assessment, lengths }) => {
  const found = assessment.positioning;
  if (found === undefined) return null;
  return {
    title: `Positioning, after ISO 230-2${found.correctedTo20 ? ", at 20 °C" : ""}`,
    blocks: [{ kind: "facts", rows: positioningRows(found, lengths) }],
  };
};

/** The quantities of ISO 230-2 by name, each with its value, and which flank has worn. */
export function positioningRows(positioning: Positioning, lengths: Lengths): readonly Fact[] {
  const { reversal, meanReversal, repeatability, meanDeviationRange, flanks } = positioning;
  const eachWay = (quantity: EachWay<number | null>): string =>
    `${known(quantity.bidirectional, lengths)}; advancing ${known(quantity.advancing, lengths)}, retracting ${known(quantity.retracting, lengths)}`;
  return [
    ["Reversal value B", `${lengths.lostMotion(reversal)}; mean ${lengths.lostMotion(meanReversal)}`],
    ["Repeatability R", eachWay(repeatability)],
    ["Mean deviation range M", lengths.lostMotion(meanDeviationRange)],
    ["Systematic deviation E", eachWay(positioning.systematicDeviation)],
    ["Accuracy A", eachWay(positioning.accuracy)],
    ["Worn flank", flankWords(flanks, lengths)],
  ];
}

function known(value: number | null, lengths: Lengths): string {
  return value === null ? "not known" : lengths.lostMotion(value);
}

const WORN: Readonly<Record<Flanks["worn"], string>> = {
  advancing: "the one that drives the slide while advancing, as far as the lead was made even",
  retracting: "the one that drives the slide while retracting, as far as the lead was made even",
  both: "both, or the lead was not made even",
  "not proven": "not proven",
};

function flankWords(flanks: Flanks | null, lengths: Lengths): string {
  if (flanks === null) return "not known: it takes three targets and two runs";
  const { advancing, retracting, worn } = flanks;
  const ranges = `${lengths.lostMotion(advancing.range)} advancing and ${lengths.lostMotion(retracting.range)} retracting`;
  const byChance = `${lengths.lostMotion(advancing.byChance)} and ${lengths.lostMotion(retracting.byChance)}`;
  return `${WORN[worn]}. About a straight line, deviations range over ${ranges}; scatter and rounding alone give up to ${byChance} in 99 of 100 surveys.`;
}
