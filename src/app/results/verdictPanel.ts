import { html, LitElement, nothing, type PropertyValues, unsafeCSS } from "lit";
import { customElement, property } from "lit/decorators.js";
import type { Assessment, Verdict } from "../../analysis/assessment.ts";
import type { RetainedDraws } from "../../analysis/decide/whatIf.ts";
import { LEAST_STATIONS } from "../../inspection/leastStations.ts";
import { type Lengths, lengthsIn } from "../../inspection/lengths.ts";
import { inOneLine } from "../../inspection/problem.ts";
import type { Inspection, Slide, Survey } from "../../inspection/schema.ts";
import { type ProfilePicture, profilePicture } from "../../picture/profilePicture.ts";
import { cautionsOf } from "../../report/cautions.ts";
import { summaryOf } from "../../report/summary.ts";
import type { InspectionEditor } from "../editing/inspectionEditor.ts";
import type { Answer } from "./worker/assessInWorker.ts";
import "./screw/screwSection.ts";
import { DeferredRender } from "../ui/deferredRender.ts";
import { controls } from "../ui/sharedStyles.ts";
import { headline, isReady } from "./headline.ts";
import { keyFigures } from "./keyFigures.ts";
import "./chart/profileChart.ts";
import "./verdictBar.ts";
import { verdictSign } from "./verdictSign.ts";
import "./whatIf/whatIfSection.ts";
import keyFiguresCss from "./keyFigures.css?inline";
import verdictPanelCss from "./verdictPanel.css?inline";

/** The verdict with its figures, profile and screw; without enough stations, what it still needs. */
@customElement("tightspot-verdict")
export class VerdictPanel extends LitElement {
  static override styles = [controls, unsafeCSS(keyFiguresCss), unsafeCSS(verdictPanelCss)];

  @property({ attribute: false }) inspection: Inspection | null = null;
  @property({ attribute: false }) survey: Survey | null = null;
  @property({ attribute: false }) answer: Answer | null = null;
  @property({ type: Boolean }) busy = false;
  @property({ attribute: false }) editor: InspectionEditor | null = null;
  /** The draws, for deciding again at other settings. */
  @property({ attribute: false }) draws: RetainedDraws | null = null;

  #picture: ProfilePicture | null = null;
  readonly #stages = new DeferredRender(this, 1, () => this.answer?.ok === true);

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has("answer")) return;
    const units = this.inspection?.slide.units ?? "mm";
    this.#picture = this.answer?.ok ? profilePicture(this.answer.value, units) : null;
  }

  override render() {
    const { inspection, survey, answer } = this;
    if (inspection === null || survey === null) return nothing;
    if (answer === null || !answer.ok) return this.#withoutVerdict(survey, answer);
    const assessment = answer.value;
    const lengths = lengthsIn(inspection.slide.units, assessment.resolution);
    const isEnough = isReady(assessment);
    return html`<section
      class="sheet tone-${isEnough ? TONES[assessment.verdict] : "plain"} ${this.#stages.isComplete ? "" : "coming"}"
      aria-label="Verdict"
      aria-busy=${this.busy}
    >
      <div class=${this.busy ? "stale" : ""}>
        ${isEnough ? this.#verdict(assessment, lengths) : this.#needed(assessment)}
        ${
          this.busy
            ? html`<p class="paper-only">
                This was printed while the verdict was being worked out anew: verdict and profile do not know of the last
                change yet. Print it again to have them.
              </p>`
            : nothing
        }
        <tightspot-verdict-bar .text=${headline(assessment)}></tightspot-verdict-bar>
      </div>
      ${isEnough ? keyFigures(assessment, lengths) : nothing}
      ${this.#stages.isComplete ? this.#further(assessment, inspection.slide, isEnough) : nothing}
    </section>`;
  }

  #further(assessment: Assessment, slide: Slide, isEnough: boolean) {
    return html`<tightspot-profile-chart .picture=${this.#picture} .assessment=${assessment}></tightspot-profile-chart>
      ${isEnough ? this.#cautions(assessment) : nothing}
      ${
        isEnough
          ? html`<tightspot-screw-section
              .assessment=${assessment}
              .slide=${slide}
              ?repairable=${mayChange(assessment)}
            ></tightspot-screw-section>`
          : nothing
      }
      ${
        isEnough && mayChange(assessment)
          ? html`<tightspot-what-if-section
              .editor=${this.editor}
              .slide=${slide}
              .assessment=${assessment}
              .draws=${this.draws}
            ></tightspot-what-if-section>`
          : nothing
      }`;
  }

  #withoutVerdict(survey: Survey, answer: Answer | null) {
    const hasReadings = survey.readings.some(({ excluded }) => excluded === undefined);
    if (answer?.ok === false && hasReadings) {
      return html`<section class="sheet" aria-label="Verdict">
        <h2>No verdict could be worked out</h2>
        <p class="wrong">${inOneLine(answer.problem)}</p>
      </section>`;
    }
    if (answer === null && hasReadings) {
      return html`<section class="sheet coming" aria-label="Verdict" aria-busy="true">
        <p class="screen-only">The verdict is being worked out.</p>
        <p class="paper-only">
          Verdict and profile are not here: this was printed before they were worked out. Print it again to have them.
        </p>
      </section>`;
    }
    return html`<section class="sheet" aria-label="Verdict">
      <div>
        <h2>The verdict will stand here</h2>
        <ul class="needed">
          <li>Read the backlash at ${LEAST_STATIONS} stations or more, near both ends of the travel and in between.</li>
          <li>Read some stations twice, and the first one again at the end.</li>
          <li>Measure the end float of the screw on its own, too: no nut adjustment removes it.</li>
        </ul>
      </div>
    </section>`;
  }

  #needed(assessment: Assessment) {
    return html`<h2>${headline(assessment)}</h2>
      <ul class="needed summary">
        ${assessment.nextReadings.map(({ why }) => html`<li>${why}</li>`)}
      </ul>`;
  }

  #verdict(assessment: Assessment, lengths: Lengths) {
    return html`<div class="verdict">
        ${verdictSign(assessment.verdict)}
        <h2>${headline(assessment)}</h2>
        <p class="summary">${summaryOf(assessment, lengths)}</p>
      </div>`;
  }

  #cautions(assessment: Assessment) {
    return html`<ul class="cautions" aria-label="Cautions">
      ${cautionsOf(assessment).map((caution) => html`<li>${caution}</li>`)}
    </ul>`;
  }
}

/** Whether other settings may change the verdict: not if the slide cannot have one. */
function mayChange({ reasons }: Assessment): boolean {
  return !reasons.includes("holds-load") && !reasons.includes("spring-loaded");
}

type Tone = "plain" | "good" | "nut" | "screw";

const TONES: Readonly<Record<Verdict, Tone>> = {
  "leave-alone": "good",
  "correct-end-float": "nut",
  "adjust-nut": "nut",
  "replace-nuts": "nut",
  "remake-screw": "screw",
  "measure-more": "plain",
  "no-verdict": "screw",
};
