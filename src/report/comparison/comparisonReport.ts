import type { Conformance } from "../../analysis/assessment.ts";
import type { ComparedSurvey } from "../../analysis/comparison/comparison.ts";
import { lengthsIn } from "../../inspection/lengths.ts";
import { PROGRAM_VERSION } from "../../inspection/programVersion.ts";
import type { Inspection } from "../../inspection/schema.ts";
import type { Reported } from "../assessment/reported.ts";
import { slideAndMachine } from "../assessment/sections/slideAndMachine.ts";
import { cautionsOf } from "../cautions.ts";
import { documentShell } from "../document/documentShell.ts";
import { lines, section, sectionFrom, signature, withUnits } from "../document/pieces.ts";
import { dateWords, dayWritten, STAGE_WORDS } from "../inspectionWords.ts";
import { html, type Markup } from "../markup.ts";
import { conformanceWords } from "../words.ts";
import type { Compared } from "./compared.ts";
import { keyChanges } from "./figures.ts";
import { COMPARISON_PARTS } from "./parts.ts";
import { measured } from "./sections/measured.ts";
import { method } from "./sections/method.ts";
import type { ComparisonSectionMaker, ReportedComparison } from "./sections/reported.ts";
import { acceptanceSentence, acceptanceTitle, changeSummary } from "./summary.ts";

const PARTS = COMPARISON_PARTS;

/** In the order of the document: what follows from the readings first, then what it rests on. */
const SECTIONS: readonly ComparisonSectionMaker[] = [
  sectionFrom(PARTS.profiles, "drawing"),
  sectionFrom(PARTS.figures, "whole"),
  sectionFrom(PARTS.alongTheTravel, "whole"),
  sectionFrom(PARTS.runningIn),
  sectionFrom(PARTS.madeComparable, "whole"),
  ({ to }) => slideAndMachine(to),
  measured,
  sectionFrom(PARTS.assumed),
  method,
];

/**
 * The report on two surveys of a slide: one self-contained HTML document, to read, save and print. The same
 * surveys give the same document, whoever asks for it and whenever.
 *
 * @param compared surveys of its inspection; throws where one of them is not in it
 */
export function comparisonReport(compared: Compared): string {
  const { inspection, comparison } = compared;
  const { from, to } = comparison;
  const { slide } = inspection;
  const reported: ReportedComparison = {
    ...compared,
    from: reportedSurvey(inspection, from),
    to: reportedSurvey(inspection, to),
  };
  return documentShell({
    title: `Before and after, ${slide.name}, ${dayWritten(from.taken)} and ${dayWritten(to.taken)}`,
    foot: `${slide.name}, surveys ${from.id} and ${to.id}, ${dateWords(to.taken)}`,
    content: [
      head(reported),
      answer(reported),
      overview(reported),
      html`<aside class="cautions"><h2>Take care</h2>${lines(cautionsOf(to.assessment))}</aside>`,
      ...SECTIONS.flatMap((make) => make(reported) ?? []).map(section),
      signature(),
      html`<p class="made">Worked out by Tightspot, version ${PROGRAM_VERSION}. The report on each survey lists its readings.</p>`,
    ],
  });
}

function reportedSurvey(inspection: Inspection, { id, assessment }: ComparedSurvey): Reported {
  const { slide } = inspection;
  const survey = inspection.surveys.find((each) => each.id === id);
  if (survey === undefined) throw new Error(`The inspection has no survey "${id}".`);
  return { inspection, slide, survey, assessment, lengths: lengthsIn(slide.units, assessment.resolution) };
}

function head({ inspection: { slide }, from, to }: ReportedComparison): Markup {
  const survey = ({ survey: { taken, stage } }: Reported): string =>
    `${dateWords(taken)}, ${STAGE_WORDS[stage]}`;
  return html`<header class="head">
<div><p class="kicker">Before and after</p><h1>${slide.name}</h1>${
    slide.machine === undefined ? [] : html`<p>${slide.machine}</p>`
  }</div>
<p class="when">Survey of ${survey(from)}<br>against ${survey(to)}</p>
</header>`;
}

const TONE: Readonly<Record<Conformance, "good" | "screw" | "open">> = {
  proven: "good",
  disproven: "screw",
  "not proven": "open",
};

/** What has changed, and whether the limit is kept now. */
function answer({ comparison, lengths }: ReportedComparison): Markup {
  const { acceptance } = comparison;
  return html`<div class="verdict ${TONE[acceptance.conformance]}">
<p class="change">${withUnits(changeSummary(comparison, lengths))}</p>
<h2>${withUnits(acceptanceTitle(acceptance, lengths))}</h2>
<p>${withUnits(acceptanceSentence(comparison, lengths))}</p></div>`;
}

/** The changes and the limit, large. */
function overview({ comparison, lengths }: ReportedComparison): Markup {
  const { limit, conformance } = comparison.acceptance;
  const held = { value: lengths.position(limit), interval: conformanceWords(conformance) };
  return html`<div class="overview"><dl class="key changes">${[
    ...keyChanges(comparison, lengths),
    ["Limit", held] as const,
  ].map(
    ([name, { value, interval }]) =>
      html`<div><dt>${name}</dt><dd class="value">${value}</dd><dd>${interval}</dd></div>`,
  )}</dl></div>`;
}
