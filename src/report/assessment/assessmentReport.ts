import type { Assessment } from "../../analysis/assessment.ts";
import { lengthsIn } from "../../inspection/lengths.ts";
import { PROGRAM_VERSION } from "../../inspection/programVersion.ts";
import type { Inspection } from "../../inspection/schema.ts";
import { cautionsOf } from "../cautions.ts";
import { dateWords, dayWritten } from "../dateWords.ts";
import { documentShell } from "../document/documentShell.ts";
import { lines } from "../document/lines.ts";
import { section } from "../document/section.ts";
import { signature } from "../document/signature.ts";
import { html, type Markup } from "../markup.ts";
import { STAGE_WORDS } from "../stageWords.ts";
import { chances } from "./chances.ts";
import { keyFigures } from "./keyFigures.ts";
import type { Reported, SectionMaker } from "./reported.ts";
import { alternatives } from "./sections/alternatives.ts";
import { assumed } from "./sections/assumed.ts";
import { checks } from "./sections/checks.ts";
import { history } from "./sections/history.ts";
import { measured } from "./sections/measured.ts";
import { method } from "./sections/method.ts";
import { nextReadings } from "./sections/nextReadings.ts";
import { numbers } from "./sections/numbers.ts";
import { positioning } from "./sections/positioning.ts";
import { profile } from "./sections/profile.ts";
import { readings } from "./sections/readings.ts";
import { replacementThread } from "./sections/replacementThread.ts";
import { screw } from "./sections/screw.ts";
import { slideAndMachine } from "./sections/slideAndMachine.ts";
import { threadMeasured } from "./sections/threadMeasured.ts";
import { uncertainty } from "./sections/uncertainty.ts";
import { verdictBlock } from "./verdictBlock.ts";

/** In the order in which they are told: what follows from the readings first, then what it rests on. */
const SECTIONS: readonly SectionMaker[] = [
  profile,
  screw,
  nextReadings,
  threadMeasured,
  alternatives,
  replacementThread,
  numbers,
  positioning,
  slideAndMachine,
  history,
  measured,
  uncertainty,
  checks,
  readings,
  assumed,
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
function overview({ assessment, lengths }: Reported): Markup {
  const sure = chances(assessment);
  return html`<div class="overview ${sure.length === 0 ? "" : "halves"}">${keyFigures(assessment, lengths)}${sure}</div>`;
}

function cautions({ assessment }: Reported): Markup {
  return html`<aside class="cautions"><h2>Take care</h2>${lines(cautionsOf(assessment))}</aside>`;
}
