import type { Assessment, Estimate, Verdict } from "../../analysis/assessment.ts";
import { type Lengths, lengthsIn } from "../../inspection/lengths.ts";
import { PROGRAM_VERSION } from "../../inspection/programVersion.ts";
import type { Inspection } from "../../inspection/schema.ts";
import { cautionsOf } from "../cautions.ts";
import { documentShell } from "../document/documentShell.ts";
import { blockMarkup, lines, section, sectionFrom, signature, withUnits } from "../document/pieces.ts";
import { alternatives } from "../evidence/alternatives.ts";
import { assumed } from "../evidence/assumed.ts";
import { chances } from "../evidence/chances.ts";
import { nextReadings } from "../evidence/nextReadings.ts";
import { numbers } from "../evidence/numbers.ts";
import { positioning } from "../evidence/positioning.ts";
import { uncertainty } from "../evidence/uncertainty.ts";
import { dateWords, dayWritten, STAGE_WORDS } from "../inspectionWords.ts";
import { html, type Markup } from "../markup.ts";
import { summaryOf, verdictTitle } from "../summary.ts";
import { conformanceWords, intervalWords } from "../words.ts";
import type { Reported, SectionMaker } from "./reported.ts";
import { checks } from "./sections/checks.ts";
import { history } from "./sections/history.ts";
import { measured } from "./sections/measured.ts";
import { method } from "./sections/method.ts";
import { profile } from "./sections/profile.ts";
import { readings } from "./sections/readings.ts";
import { replacementThread } from "./sections/replacementThread.ts";
import { screw } from "./sections/screw.ts";
import { slideAndMachine } from "./sections/slideAndMachine.ts";
import { threadMeasured } from "./sections/threadMeasured.ts";

/** In the order of the document: what follows from the readings first, then what it rests on. */
const SECTIONS: readonly SectionMaker[] = [
  profile,
  screw,
  sectionFrom(nextReadings),
  threadMeasured,
  sectionFrom(alternatives),
  replacementThread,
  sectionFrom(numbers, "whole"),
  sectionFrom(positioning),
  slideAndMachine,
  history,
  measured,
  sectionFrom(uncertainty, "whole"),
  checks,
  readings,
  sectionFrom(assumed),
  method,
];

/**
 * The report on one survey of an inspection: one self-contained HTML document, to read, save and print. The same
 * inspection and assessment give the same document, whoever asks for it and whenever.
 *
 * @param assessment that of a survey of this inspection; throws where it is of another
 */
export function assessmentReport(inspection: Inspection, assessment: Assessment): string {
  const { slide } = inspection;
  const survey = inspection.surveys.find(({ id }) => id === assessment.survey);
  if (survey === undefined) throw new Error(`The inspection has no survey "${assessment.survey}".`);
  const lengths = lengthsIn(slide.units, assessment.resolution);
  const reported: Reported = { inspection, slide, survey, assessment, lengths };
  return documentShell({
    title: `Report on ${slide.name}, ${dayWritten(survey.taken)}`,
    foot: `${slide.name}, survey ${survey.id}, ${dateWords(survey.taken)}`,
    content: [
      head(reported),
      verdictBlock(assessment, lengths),
      overview(reported),
      cautions(reported),
      ...SECTIONS.flatMap((make) => make(reported) ?? []).map(section),
      signature(),
      html`<p class="made">Worked out by Tightspot, version ${PROGRAM_VERSION}, from the readings listed above.</p>`,
    ],
  });
}

function head({ slide, survey }: Reported): Markup {
  const stage = STAGE_WORDS[survey.stage];
  return html`<header class="head">
<div><p class="kicker">Report on lost motion</p><h1>${slide.name}</h1>${
    slide.machine === undefined ? [] : html`<p>${slide.machine}</p>`
  }</div>
<p class="when">Survey of ${dateWords(survey.taken)}, ${stage}</p>
</header>`;
}

/** The figures, and beside them how sure each step is. */
function overview(reported: Reported): Markup {
  const { assessment, lengths } = reported;
  const { title = "", blocks = [] } = chances(reported) ?? {};
  const sure =
    blocks.length === 0 ? [] : html`<div role="group" aria-label="${title}">${blocks.map(blockMarkup)}</div>`;
  return html`<div class="overview ${blocks.length === 0 ? "" : "halves"}">${keyFigures(assessment, lengths)}${sure}</div>`;
}

function cautions({ assessment }: Reported): Markup {
  return html`<aside class="cautions"><h2>Take care</h2>${lines(cautionsOf(assessment))}</aside>`;
}

/** The part of the slide that a verdict is about. */
const ABOUT: Readonly<Record<Verdict, "good" | "nut" | "screw" | "open">> = {
  "leave-alone": "good",
  "correct-end-float": "nut",
  "adjust-nut": "nut",
  "replace-nuts": "nut",
  "remake-screw": "screw",
  "measure-more": "open",
  "no-verdict": "screw",
};

/** The verdict in a few words, and in a few sentences with its numbers. */
function verdictBlock(assessment: Assessment, lengths: Lengths): Markup {
  return html`<div class="verdict ${ABOUT[assessment.verdict]}"><p class="kicker">Verdict</p>
<h2>${verdictTitle(assessment)}</h2>
<p>${withUnits(summaryOf(assessment, lengths))}</p></div>`;
}

/** The figures that the verdict turns on, large. */
function keyFigures(assessment: Assessment, lengths: Lengths): Markup {
  const { greatest, uniform, uneven, settings, conformance } = assessment;
  const estimate = (name: string, of: Estimate): Markup =>
    figure(name, lengths.lostMotion(of.value), intervalWords(of, lengths));
  return html`<dl class="key">${estimate("Greatest lost motion", greatest)}${figure(
    "Limit",
    lengths.position(settings.limit),
    conformanceWords(conformance),
  )}${estimate("Uniform part", uniform)}${estimate("Uneven part", uneven)}</dl>`;
}

function figure(name: string, value: string, words: string): Markup {
  return html`<div><dt>${name}</dt><dd class="value">${value}</dd><dd>${words}</dd></div>`;
}
