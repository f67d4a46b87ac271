import type { Assessment } from "../../analysis/assessment.ts";
import { lengthsIn } from "../../inspection/lengths.ts";
import { PROGRAM_VERSION } from "../../inspection/programVersion.ts";
import type { Inspection } from "../../inspection/schema.ts";
import { cautionsOf } from "../cautions.ts";
import { dateWords, dayWritten } from "../dateWords.ts";
import { documentShell } from "../document/documentShell.ts";
import { blockMarkup, lines, section, sectionFrom, signature } from "../document/pieces.ts";
import { alternatives } from "../evidence/alternatives.ts";
import { assumed } from "../evidence/assumed.ts";
import { chances } from "../evidence/chances.ts";
import { nextReadings } from "../evidence/nextReadings.ts";
import { numbers } from "../evidence/numbers.ts";
import { positioning } from "../evidence/positioning.ts";
import { uncertainty } from "../evidence/uncertainty.ts";
import { html, type Markup } from "../markup.ts";
import { STAGE_WORDS } from "../stageWords.ts";
import { keyFigures } from "./keyFigures.ts";
import type { Reported, SectionMaker } from "./reported.ts";
import { checks } from "./sections/checks.ts";
import { history } from "./sections/history.ts";
import { measured } from "./sections/measured.ts";
import { method } from "./sections/method.ts";
import { profile } from "./sections/profile.ts";
import { readings } from "./sections/readings.ts";
import { screw } from "./sections/screw.ts";
import { slideAndMachine } from "./sections/slideAndMachine.ts";
import { verdictBlock } from "./verdictBlock.ts";

/** In the order of the document: what follows from the readings first, then what it rests on. */
const SECTIONS: readonly SectionMaker[] = [
  profile,
  screw,
  sectionFrom(nextReadings),
  sectionFrom(alternatives),
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
 * The report on one survey of an inspection: one self-contained HTML document, to be read, kept and printed. The same
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
