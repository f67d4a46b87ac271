import { ACTIONS, type Assessment } from "../analysis/assessment.ts";
import type { Lengths } from "../inspection/lengths.ts";
import { lengthsIn } from "../inspection/lengths.ts";
import type { Inspection } from "../inspection/schema.ts";
import { profilePicture } from "../picture/profilePicture.ts";
import { profileText } from "../picture/profileText.ts";
import { alternativesOf } from "./alternatives.ts";
import { cautionsOf } from "./cautions.ts";
import { columns, items, wrapped } from "./plainText.ts";
import { positioningRows } from "./positioning.ts";
import { summaryOf } from "./summary.ts";
import { verdictTitle } from "./verdictTitle.ts";
import { ACTION_WORDS, capitalised, chanceWords, estimateWords, inAHundred } from "./words.ts";

const WIDTH = 80;

/**
 * The assessment of one survey as text for a terminal, the verdict first.
 *
 * @param file the name that the inspection was read under
 */
export function terminalText(file: string, assessment: Assessment, inspection: Inspection): string {
  const lengths = lengthsIn(inspection.slide.units, assessment.resolution);
  const { slide } = inspection;
  const sections: readonly (readonly string[])[] = [
    [`${slide.name}, survey "${assessment.survey}" (${file})`],
    [verdictTitle(assessment).toUpperCase(), ...wrapped(summaryOf(assessment, lengths), WIDTH)],
    profileText(profilePicture(assessment, slide.units), WIDTH),
    numbers(assessment, lengths),
    chances(assessment),
    positions(assessment, lengths),
    listed("Instead of remaking the screw", alternativesOf(assessment, slide)),
    listed(
      "Checks on the readings",
      assessment.checks.map(({ severity, message }) =>
        severity === "note" ? message : `${capitalised(severity)}: ${message}`,
      ),
    ),
    listed("Read next", nextReadings(assessment, lengths)),
    listed("Cautions", cautionsOf(assessment)),
    listed("Assumed", assessment.assumed),
  ];
  const text = sections.filter((lines) => lines.length > 0).map((lines) => lines.join("\n"));
  return `${text.join("\n\n")}\n`;
}

function listed(title: string, lines: readonly string[]): readonly string[] {
  return lines.length === 0 ? [] : [title, ...items(lines, WIDTH)];
}

function numbers(assessment: Assessment, lengths: Lengths): readonly string[] {
  const { settings, uniform, takeUp, uneven, endFloat, afterAdjusting, uncertainty } = assessment;
  const left = settings.adjustable ? "Left after adjusting, at worst" : "Left with new nuts, at worst";
  const rows: (readonly [string, string])[] = [
    ["Limit", `${lengths.position(settings.limit)}; keeping it is ${assessment.conformance}`],
    ["Uniform, at the tight spot", estimateWords(uniform, lengths)],
    ["End float", endFloat === null ? "not measured" : estimateWords(endFloat, lengths)],
    ["Nut can take up", takeUp.value > 0 ? estimateWords(takeUp, lengths) : "nothing"],
    ["Uneven along the travel", estimateWords(uneven, lengths)],
    ["Chance that it is real", chanceWords(assessment.unevenChance)],
    [
      left,
      `${estimateWords(afterAdjusting.worst, lengths)}, at about ${lengths.spot(afterAdjusting.position)}`,
    ],
    ...assessment.wornZones.map(
      ({ from, to, atLeast }) =>
        [
          "Screw worn",
          `by at least ${lengths.lostMotion(atLeast)} from about ${lengths.spot(from)} to ${lengths.spot(to)}`,
        ] as const,
    ),
    ["Repeatability of a reading", `${lengths.position(assessment.repeatability)}, one standard deviation`],
    ["Uncertainty, loosest spot", `${lengths.position(uncertainty.expanded)}, expanded (U = 2 u)`],
  ];
  return ["Numbers", ...columns(rows, WIDTH)];
}

function chances({ chances }: Assessment): readonly string[] {
  if (chances === null) return [];
  const rows = ACTIONS.map(
    (action) => [capitalised(ACTION_WORDS[action]), inAHundred(chances[action])] as const,
  );
  return ["Chances", ...columns(rows, WIDTH)];
}

function positions({ positioning }: Assessment, lengths: Lengths): readonly string[] {
  if (positioning === undefined) return [];
  const title = `Positioning, after ISO 230-2${positioning.correctedTo20 ? ", at 20 °C" : ""}`;
  return [title, ...columns(positioningRows(positioning, lengths), WIDTH)];
}

function nextReadings({ nextReadings }: Assessment, lengths: Lengths): readonly string[] {
  return nextReadings.map((reading) =>
    "endFloat" in reading
      ? `The end float. ${reading.why}`
      : `At about ${lengths.spot(reading.position)}. ${reading.why}`,
  );
}
