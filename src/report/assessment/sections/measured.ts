import { isPlainObject } from "../../../inspection/plainData.ts";
import type { Inspection, Method, Reading, Survey } from "../../../inspection/schema.ts";
import { toMillimetres } from "../../../inspection/units.ts";
import type { Fact } from "../../blocks.ts";
import { facts, table } from "../../document/pieces.ts";
import { dateWords, STAGE_WORDS } from "../../inspectionWords.ts";
import { html, type Markup } from "../../markup.ts";
import type { Reported, SectionMaker } from "../reported.ts";

/** How readings were taken, for a reader who was not there. */
const METHOD_WORDS: Readonly<Record<Method, string>> = {
  "push-pull":
    "Push–pull. Indicator on the slide, screw held still: the slide was pushed, then pulled by hand until it was stopped. The sweep of the indicator is the lost motion.",
  "indicator-pair":
    "Indicator pair. Indicator on the slide: the handwheel was brought to the same dial mark once while advancing and once while retracting, and the indicator was read each time. The difference of the two is the lost motion.",
  "dial-pair":
    "Dial pair. Indicator on the slide: the handwheel was turned until the indicator just returned to its mark, once from each side, and the handwheel's dial was read each time. The difference of the two, across the dial's zero, times the travel of a division is the lost motion.",
  positioning:
    "Positions at targets. The slide was brought to each target from either side, and its true position was read each time. The difference of the two is the lost motion.",
};

/** How the readings were taken, with what and under which conditions, and which other surveys there are. */
export const measured: SectionMaker = (reported) => ({
  title: "How it was measured",
  as: "whole",
  content: [surveyFacts(reported), surveys(reported)],
});

/** How the readings of one survey were taken. */
export function surveyFacts({ survey, assessment, slide, lengths }: Reported): Markup {
  const length = (value: number): string => lengths.position(toMillimetres(value, slide.units));
  const { stations } = assessment;
  const optional = (fact: string, words: string | undefined): readonly Fact[] =>
    words === undefined || words === "" ? [] : [[fact, words]];
  return facts([
    ["Survey", `${survey.id}, ${dateWords(survey.taken)}, ${STAGE_WORDS[survey.stage]}`],
    ["Way of measuring", METHOD_WORDS[survey.method]],
    ["Readings", readingsWords(survey.readings, stations.length)],
    ["Indicator", indicatorWords(survey, length)],
    ...optional("Handwheel's dial", dialWords(survey, length)),
    ["End float", endFloatWords(survey, length)],
    ...optional("Drive play", survey.drivePlay === undefined ? undefined : length(survey.drivePlay)),
    ["Conditions", conditionWords(survey.conditions)],
    ...optional("Hours of use", survey.hoursOfUse === undefined ? undefined : `${survey.hoursOfUse} h`),
    ...optional("Note", survey.note),
  ]);
}

function readingsWords(readings: readonly Reading[], stations: number): string {
  const struck = readings.filter(({ excluded }) => excluded !== undefined).length;
  const counted = `${readings.length} ${readings.length === 1 ? "reading" : "readings"} at ${stations} ${stations === 1 ? "station" : "stations"}`;
  return struck === 0 ? `${counted}, none struck` : `${counted}, ${struck} of them struck`;
}

type LengthWords = (value: number) => string;

function indicatorWords({ indicator }: Survey, length: LengthWords): string {
  const { name, resolution, error, hysteresis, angleToTravel } = indicator ?? {};
  const words = [
    ...(name === undefined || name === "" ? [] : [name]),
    ...(resolution === undefined ? [] : [`resolution ${length(resolution)}`]),
    ...(error === undefined ? [] : [`limit of error ${length(error)} either way`]),
    ...(hysteresis === undefined ? [] : [`hysteresis ${length(hysteresis)}`]),
    ...(angleToTravel === undefined ? [] : [`at ${angleToTravel}° to the travel, corrected`]),
  ];
  return words.length === 0 ? "not described" : words.join(", ");
}

function dialWords({ dial }: Survey, length: LengthWords): string | undefined {
  if (dial === undefined) return undefined;
  const { travelPerDivision, divisions, graduatedOnDiameter } = dial;
  return [
    `${length(travelPerDivision)} a division as printed`,
    ...(divisions === undefined ? [] : [`${divisions} divisions`]),
    ...(graduatedOnDiameter === true ? ["graduated on diameter, halved"] : []),
  ].join(", ");
}

function endFloatWords({ endFloat = [] }: Survey, length: LengthWords): string {
  if (endFloat.length === 0) return "not measured";
  return `measured on its own: ${endFloat.map(length).join(", ")}`;
}

/** All surveys of the slide that there are, where this is not the only one. */
function surveys({ inspection, survey }: Reported): Markup {
  if (inspection.surveys.length < 2) return html``;
  return surveyTable(inspection, ({ id }) => (id === survey.id ? "this report" : ""));
}

/**
 * All surveys of a slide as a table.
 *
 * @param note what to write beside a survey
 */
export function surveyTable({ surveys }: Inspection, note: (survey: Survey) => string): Markup {
  const rows = surveys.map((each) => ({
    cells: [each.id, dateWords(each.taken), STAGE_WORDS[each.stage], note(each)],
  }));
  const columns = ["Survey", "Date", "Stage", ""].map((name) => ({ name, holds: "words" as const }));
  return html`<h3>All surveys of this slide</h3>${table(columns, rows)}`;
}

/** The conditions whose meaning is known; any other is shown under its name. */
const CONDITIONS: Readonly<Record<string, (value: unknown) => string>> = {
  temperature: (value) => `${written(value)} °C`,
  expansion: (value) => `the screw expands more than the scale by ${written(value)} µm/(m·K)`,
};

/** The conditions noted with a survey, of any shape, in words. */
export function conditionWords(conditions: unknown): string {
  if (conditions === undefined || conditions === null || conditions === "") return "none noted";
  if (!isPlainObject(conditions)) return written(conditions);
  const words = Object.entries(conditions).map(
    ([name, value]) => CONDITIONS[name]?.(value) ?? `${name}: ${written(value)}`,
  );
  return words.length === 0 ? "none noted" : words.join(", ");
}

function written(value: unknown): string {
  return typeof value === "string" ? value : JSON.stringify(value);
}
