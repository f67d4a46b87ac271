import { ACTIONS, type Assessment } from "../analysis/assessment.ts";
import { type Lengths, lengthsIn } from "../inspection/lengths.ts";
import type { Inspection } from "../inspection/schema.ts";
import type { Units } from "../inspection/units.ts";
import { profilePicture } from "../picture/profilePicture.ts";
import { profileText } from "../picture/profileText.ts";
import { alternativesOf } from "./alternatives.ts";
import { cautionsOf } from "./cautions.ts";
import { numberRows } from "./numberRows.ts";
import { actionWords } from "./outsidePlay.ts";
import { columns, items, wrapped } from "./plainText.ts";
import { positioningRows } from "./positioning.ts";
import { summaryOf } from "./summary.ts";
import { uncertaintyWords } from "./uncertaintyWords.ts";
import { verdictTitle } from "./verdictTitle.ts";
import { capitalised, inAHundred } from "./words.ts";

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
    ["Numbers", ...columns(numberRows(assessment, lengths), WIDTH)],
    chances(assessment),
    positions(assessment, lengths),
    uncertainty(assessment, slide.units),
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

function uncertainty(assessment: Assessment, units: Units): readonly string[] {
  const { lines, expanded } = uncertaintyWords(assessment, units);
  const rows = [...lines, ["expanded, U = 2 u", expanded] as const].map(
    ([source, words]) => [capitalised(source), words] as const,
  );
  return ["Uncertainty at the loosest spot, as standard uncertainty u", ...columns(rows, WIDTH)];
}

function chances(assessment: Assessment): readonly string[] {
  const { chances } = assessment;
  if (chances === null) return [];
  const rows = ACTIONS.map(
    (action) => [capitalised(actionWords(action, assessment)), inAHundred(chances[action])] as const,
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
