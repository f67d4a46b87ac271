import type { Estimate } from "../../analysis/assessment.ts";
import type { ComparedSurvey, Comparison } from "../../analysis/comparison/comparison.ts";
import type { RunningIn, TooFewSurveys } from "../../analysis/runningIn/runningIn.ts";
import { type Lengths, lengthsIn } from "../../inspection/lengths.ts";
import type { Inspection } from "../../inspection/schema.ts";
import { cautionsOf } from "../cautions.ts";
import { columns, items, wrapped } from "../plainText.ts";
import { estimateWords, inAHundred } from "../words.ts";
import { ALONG_HEADINGS, alongTheTravelRows } from "./alongTheTravel.ts";
import { runningInSummary, timeWords, tooLittleWords } from "./runningInSummary.ts";
import { comparisonSummary, conformanceWords } from "./summary.ts";

const WIDTH = 80;
const COLUMN = 12;
const BAND_COLUMN = 20;

/** The comparison of two surveys as text for a terminal, and the trend where there is one. */
export function comparisonText(
  file: string,
  comparison: Comparison,
  history: RunningIn | TooFewSurveys,
  { slide }: Inspection,
  assumed: readonly string[],
): string {
  const lengths = lengthsIn(slide.units, comparison.resolution);
  const { from, to } = comparison;
  const sections: readonly (readonly string[])[] = [
    [`${slide.name} (${file})`, ...wrapped(`${called(from)} against ${called(to)}`, WIDTH)],
    ["BEFORE AND AFTER", ...wrapped(comparisonSummary(comparison, lengths), WIDTH)],
    ["Numbers", ...columns(numberRows(comparison, lengths), WIDTH)],
    alongTheTravel(comparison, lengths),
    runningIn(history, lengths),
    listed("How the surveys were made comparable", comparison.notes),
    listed("Cautions", cautionsOf(to.assessment)),
    listed("Assumed", assumed),
  ];
  const text = sections.filter((lines) => lines.length > 0).map((lines) => lines.join("\n"));
  return `${text.join("\n\n")}\n`;
}

function called({ id, taken, stage }: ComparedSurvey): string {
  return `"${id}" (${taken.slice(0, 10)}, ${stage.replaceAll("-", " ")})`;
}

function listed(title: string, lines: readonly string[]): readonly string[] {
  return lines.length === 0 ? [] : [title, ...items(lines, WIDTH)];
}

function numberRows(
  { from, to, change, acceptance }: Comparison,
  lengths: Lengths,
): readonly (readonly [string, string])[] {
  const row = (
    name: string,
    before: Estimate | null,
    after: Estimate | null,
    difference: Estimate | null,
  ): readonly [string, string] => [
    name,
    before === null || after === null || difference === null
      ? `${before === null ? "not measured" : lengths.lostMotion(before.value)}, then ${after === null ? "not measured" : lengths.lostMotion(after.value)}`
      : `${lengths.lostMotion(before.value)}, then ${lengths.lostMotion(after.value)}: ${signed(difference, lengths)}`,
  ];
  const [before, after] = [from.assessment, to.assessment];
  return [
    row("Uniform part", before.uniform, after.uniform, change.uniform),
    row("Uneven part", before.uneven, after.uneven, change.uneven),
    row("Greatest lost motion", before.greatest, after.greatest, change.greatest),
    row("End float", before.endFloat, after.endFloat, change.endFloat),
    ...(change.uniformLessEndFloat === null
      ? []
      : [["Uniform part less end float", signed(change.uniformLessEndFloat, lengths)] as const]),
    [
      "Limit",
      `${lengths.position(acceptance.limit)}; keeping it is ${conformanceWords(acceptance)} (chance ${inAHundred(acceptance.chance)})`,
    ],
  ];
}

/** A change with its sign: more is `+0.02 mm`. */
function signed(change: Estimate, lengths: Lengths): string {
  return `changed by ${change.value > 0 ? "+" : ""}${estimateWords(change, lengths)}`;
}

function alongTheTravel(comparison: Comparison, lengths: Lengths): readonly string[] {
  return [
    `Lost motion along the travel (${lengths.units})`,
    ...[ALONG_HEADINGS, ...alongTheTravelRows(comparison, lengths)].map((cells) =>
      cells.map((cell, i) => cell.padStart(i < 4 ? COLUMN : BAND_COLUMN)).join(""),
    ),
  ];
}

function runningIn(history: RunningIn | TooFewSurveys, lengths: Lengths): readonly string[] {
  if (!("trend" in history)) {
    return history.surveys < 2 ? [] : ["Running in", ...wrapped(tooLittleWords(history), WIDTH)];
  }
  const rows = history.surveys.map(
    ({ survey, at, uniform }) =>
      [
        `${timeWords(at, history.by)}, "${survey}"`,
        `uniform part ${estimateWords(uniform, lengths)}`,
      ] as const,
  );
  return ["Running in", ...wrapped(runningInSummary(history, lengths), WIDTH), ...columns(rows, WIDTH)];
}
