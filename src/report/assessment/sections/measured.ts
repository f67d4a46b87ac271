import type { Inspection, Reading, Survey } from "../../../inspection/schema.ts";
import { toMillimetres } from "../../../inspection/units.ts";
import type { Fact } from "../../blocks.ts";
import { conditionWords } from "../../conditionWords.ts";
import { dateWords } from "../../dateWords.ts";
import { facts, table } from "../../document/pieces.ts";
import { html, type Markup } from "../../markup.ts";
import { METHOD_WORDS } from "../../methodWords.ts";
import { STAGE_WORDS } from "../../stageWords.ts";
import type { Reported, SectionMaker } from "../reported.ts";

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
    ...(error === undefined ? [] : [`limit of error ± ${length(error)}`]),
    ...(hysteresis === undefined ? [] : [`hysteresis ${length(hysteresis)}`]),
    ...(angleToTravel === undefined ? [] : [`at ${angleToTravel}° to the travel, corrected`]),
  ];
  return words.length === 0 ? "nothing stated of it" : words.join(", ");
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

/** All surveys of a slide, with what is said of each. */
export function surveyTable({ surveys }: Inspection, said: (survey: Survey) => string): Markup {
  const rows = surveys.map((each) => ({
    cells: [each.id, dateWords(each.taken), STAGE_WORDS[each.stage], said(each)],
  }));
  const columns = ["Survey", "Date", "Stage", ""].map((name) => ({ name, holds: "words" as const }));
  return html`<h3>All surveys of this slide</h3>${table(columns, rows)}`;
}
