import { html, LitElement, nothing, unsafeCSS } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { unsafeHTML } from "lit/directives/unsafe-html.js";
import type { SurveyChoice } from "../../analysis/comparison/chooseSurveys.ts";
import type { Comparison } from "../../analysis/comparison/comparison.ts";
import { hasReadings } from "../../analysis/surveysByDate.ts";
import type { Lengths } from "../../inspection/lengths.ts";
import { inOneLine } from "../../inspection/problem.ts";
import type { Inspection } from "../../inspection/schema.ts";
import { conformanceSign } from "../../picture/conformanceSign.ts";
import { type Part, sentenceList } from "../../report/blocks.ts";
import { cautionsOf } from "../../report/cautions.ts";
import { type Compared, comparedOf } from "../../report/comparison/compared.ts";
import { keyChanges } from "../../report/comparison/figures.ts";
import { COMPARISON_PARTS } from "../../report/comparison/parts.ts";
import {
  acceptanceChance,
  acceptanceSentence,
  acceptanceTitle,
  changeSummary,
} from "../../report/comparison/summary.ts";
import type { InspectionEditor } from "../editing/inspectionEditor.ts";
import { blockTemplate } from "../results/evidence/blocks.ts";
import keyFiguresCss from "../results/keyFigures.css?inline";
import { isOpen } from "../ui/isOpen.ts";
import { controls } from "../ui/sharedStyles.ts";
import { addSurveys } from "./addSurveys.ts";
import type { Found } from "./comparisonController.ts";
import comparisonPanelCss from "./comparisonPanel.css?inline";
import { surveyChoice } from "./surveyChoice.ts";

const ONE_TOO_FEW =
  "Comparing takes two surveys with readings. Survey the slide again after the repair with “New survey”, or add the surveys of another file of this slide.";

/** Any two surveys of the slide against each other: what has changed, whether the limit is kept, and running in. */
@customElement("tightspot-comparing")
export class ComparisonPanel extends LitElement {
  static override styles = [controls, unsafeCSS(keyFiguresCss), unsafeCSS(comparisonPanelCss)];

  @property({ attribute: false }) editor: InspectionEditor | null = null;
  @property({ attribute: false }) inspection: Inspection | null = null;
  @property({ attribute: false }) choice: SurveyChoice = {};
  @property({ attribute: false }) found: Found | null = null;
  @property({ type: Boolean }) busy = false;

  /** The report is made only where it is asked for: making it takes longer than a keystroke. */
  @state() private isReportOpen = false;

  override render() {
    const { inspection, choice } = this;
    if (inspection === null) return nothing;
    const read = inspection.surveys.filter(hasReadings);
    if (read.length < 2) {
      return html`<p>${ONE_TOO_FEW}</p>
        ${this.#addFromFile()}`;
    }
    return html`${surveyChoice(this, inspection, choice)} ${this.#answer()} ${this.#addFromFile()}`;
  }

  #answer() {
    const { found, busy } = this;
    if (found === null) return html`<p role="status">Comparing the surveys …</p>`;
    if (!found.reply.ok)
      return busy ? nothing : html`<p class="wrong" role="alert">${inOneLine(found.reply.problem)}</p>`;
    const compared = comparedOf(found.inspection, found.reply.value);
    return html`<div class="answer ${busy ? "stale" : ""}" aria-busy=${busy}>${shown(compared)}</div>
      <details class="screen-only" @toggle=${this.#reportToggled}>
        <summary>Report on both surveys</summary>
        ${
          this.isReportOpen
            ? html`<tightspot-comparison-report .found=${found}></tightspot-comparison-report>`
            : nothing
        }
      </details>`;
  }

  #addFromFile() {
    return html`<div class="screen-only">
      <button type="button" @click=${this.#chooseFile}>Add surveys from a file</button>
      <input
        type="file"
        hidden
        aria-label="File with surveys of this slide"
        accept=".json,application/json"
        @change=${this.#chosen}
      />
    </div>`;
  }

  #reportToggled(event: Event): void {
    this.isReportOpen = isOpen(event);
    if (this.isReportOpen) void import("./comparisonReport.ts");
  }

  readonly #chooseFile = (): void => this.renderRoot.querySelector("input")?.click();

  readonly #chosen = ({ target }: Event): void => {
    if (!(target instanceof HTMLInputElement)) return;
    const [file] = target.files ?? [];
    target.value = "";
    if (file !== undefined && this.editor !== null) void addSurveys(this, file, this.editor);
  };
}

function shown(compared: Compared) {
  const { comparison, lengths } = compared;
  const { profiles, figures, alongTheTravel, runningIn, madeComparable, assumed } = COMPARISON_PARTS;
  return html`
    <p class="lead" role="status">${changeSummary(comparison, lengths)}</p>
    ${acceptance(comparison, lengths)} ${keyFigures(comparison, lengths)}
    ${profiles(compared)?.blocks.map(blockTemplate)}
    ${partTemplate(figures(compared))} ${folded(alongTheTravel(compared))}
    ${partTemplate(runningIn(compared))} ${partTemplate(madeComparable(compared))}
    ${partTemplate({ title: "Cautions", blocks: [sentenceList(cautionsOf(comparison.to.assessment))] }, "cautions")}
    ${folded(assumed(compared))}
  `;
}

/** Whether the limit is kept, by the later survey: a sign, a line, and the sentence with its numbers. */
function acceptance(comparison: Comparison, lengths: Lengths) {
  const { conformance } = comparison.acceptance;
  return html`<section class="acceptance ${conformance.replace(" ", "-")}" aria-label="Acceptance">
    ${unsafeHTML(conformanceSign(conformance))}
    <h3>${acceptanceTitle(comparison.acceptance, lengths)}</h3>
    <p>${acceptanceSentence(comparison, lengths)} ${acceptanceChance(comparison)}</p>
  </section>`;
}

function keyFigures(comparison: Comparison, lengths: Lengths) {
  return html`<dl class="key">
    ${keyChanges(comparison, lengths).map(
      ([term, { value, interval }]) => html`<div>
        <dt>${term}</dt>
        <dd class="value">${value}</dd>
        <dd class="range">${interval}</dd>
      </div>`,
    )}
  </dl>`;
}

/** A part under its title; a table that says what a picture shows is folded. */
function partTemplate(part: Part | null, look = "") {
  if (part === null) return nothing;
  const { title, blocks } = part;
  return html`<section class="part ${look}">
    <h3>${title}</h3>
    ${blocks.map((block, index) =>
      block.kind === "table" && index > 0
        ? folded({ title: `${title}, as a table`, blocks: [block] })
        : blockTemplate(block),
    )}
  </section>`;
}

function folded(part: Part | null) {
  if (part === null) return nothing;
  return html`<details>
    <summary>${part.title}</summary>
    ${part.blocks.map(blockTemplate)}
  </details>`;
}
