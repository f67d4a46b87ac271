import { alignmentCosine, correct } from "../../analysis/correct/corrections.ts";
import { surveyInMillimetres } from "../../inspection/metric.ts";
import { isPair, isPositioning } from "../../inspection/readingShapes.ts";
import type { Reading } from "../../inspection/schema.ts";
import { toMillimetres } from "../../inspection/units.ts";
import type { Column } from "../blocks.ts";
import { timeWords } from "../inspectionWords.ts";
import { columnFigures } from "../words.ts";
import type { Reported } from "./reported.ts";

/** A column of the table of readings, with a cell for every reading. */
export interface ReadingColumn extends Column {
  readonly cells: readonly string[];
}

/** The columns that the readings of a survey take: as they were read first, then what was worked out of them. */
export function readingColumns(reported: Reported): readonly ReadingColumn[] {
  const { readings, method } = reported.survey;
  const { units } = reported.slide;
  const readIn = method === "dial-pair" ? "div." : units;
  const numbers: ReadingColumn = {
    name: "No.",
    holds: "figures",
    cells: readings.map((_, index) => String(index + 1)),
  };
  const filled = [
    figures(`Position, ${units}`, readings, (item) => (isPositioning(item) ? undefined : item.position)),
    figures(`Target, ${units}`, readings, (item) => (isPositioning(item) ? item.target : undefined)),
    words("Direction", readings, (item) => (isPositioning(item) ? item.direction : undefined)),
    figures("Run", readings, (item) => (isPositioning(item) ? item.run : undefined)),
    figures(`Advancing, ${readIn}`, readings, (item) => (isPair(item) ? item.advancing : undefined)),
    figures(`Retracting, ${readIn}`, readings, (item) => (isPair(item) ? item.retracting : undefined)),
    figures(`Reading, ${units}`, readings, (item) => (isPositioning(item) ? item.reading : undefined)),
    figures(`Lost motion, ${units}`, readings, (item) =>
      isPair(item) || isPositioning(item) ? undefined : item.backlash,
    ),
    workedOut(reported),
    words("Time", readings, ({ time }) => (time === undefined ? undefined : timeWords(time))),
    words("Remarks", readings, remarks),
  ].filter(({ cells }) => cells.some((cell) => cell !== ""));
  return [numbers, ...filled];
}

function figures(
  name: string,
  readings: readonly Reading[],
  of: (item: Reading) => number | undefined,
): ReadingColumn {
  const values = readings.map(of);
  const written = columnFigures(values.filter((value) => value !== undefined));
  let next = 0;
  const cells = values.map((value) => (value === undefined ? "" : (written[next++] ?? "")));
  return { name, holds: "figures", cells };
}

function words(
  name: string,
  readings: readonly Reading[],
  of: (item: Reading) => string | undefined,
): ReadingColumn {
  return { name, holds: "words", cells: readings.map((item) => of(item) ?? "") };
}

/** The lost motion that counting readings come to, where it is not what was read. */
function workedOut({ survey, slide, lengths }: Reported): ReadingColumn {
  const { units, screw } = slide;
  const metric = surveyInMillimetres(survey, units);
  const { readings } = correct(metric, toMillimetres(screw.lead, units));
  const asRead = survey.readings.every((item) => !isPair(item) && !isPositioning(item));
  const shown = new Map(
    asRead && alignmentCosine(metric) === 1
      ? []
      : readings.flatMap(({ from, value }) => from.map((index) => [index, lengths.figure(value)] as const)),
  );
  return {
    name: `Lost motion worked out, ${units}`,
    holds: "figures",
    cells: survey.readings.map((_, index) => shown.get(index) ?? ""),
  };
}

function remarks({ excluded, note }: Reading): string {
  const struck = excluded === undefined ? "" : `Struck: ${excluded.trim() || "no reason given"}`;
  return [struck, note?.trim() ?? ""].filter((text) => text !== "").join(". ");
}
