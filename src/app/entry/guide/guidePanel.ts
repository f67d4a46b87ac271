import { html, LitElement, nothing, unsafeCSS } from "lit";
import { customElement, property } from "lit/decorators.js";
import type { Assessment } from "../../../analysis/assessment.ts";
import type { Slide, Survey } from "../../../inspection/schema.ts";
import type { EditorState, GuideState } from "../../../records/editorState.ts";
import type { InspectionEditor } from "../../editing/inspectionEditor.ts";
import type { Row } from "../../editing/rows.ts";
import { SCROLLED_INTO_VIEW } from "../../ui/scrollAnchor.ts";
import { controls } from "../../ui/sharedStyles.ts";
import type { EndFloatStep } from "./endFloatStep.ts";
import "./endFloatStep.ts";
import { freshGuide } from "./freshGuide.ts";
import type { ReadingStep } from "./readingStep.ts";
import "./readingStep.ts";
import "./stationsStep.ts";
import "./methodStep.ts";
import guidePanelCss from "./guidePanel.css?inline";

const STEPS = [
  ["way", "Way"],
  ["end float", "End float"],
  ["stations", "Stations"],
  ["readings", "Read"],
] as const;

/** Measuring step by step: the way, the end float, the stations, and then one reading after the other. */
@customElement("tightspot-guide")
export class GuidePanel extends LitElement {
  static override styles = [controls, unsafeCSS(guidePanelCss)];

  @property({ attribute: false }) editor: InspectionEditor | null = null;
  @property({ attribute: false }) editorState: EditorState | null = null;
  @property({ attribute: false }) slide: Slide | null = null;
  @property({ attribute: false }) survey: Survey | null = null;
  @property({ attribute: false }) rows: readonly Row[] = [];
  @property({ attribute: false }) assessment: Assessment | null = null;

  override render() {
    const guide = this.#guide;
    if (guide === null) return nothing;
    return html`
      <nav aria-label="Steps of measuring">
        <ol>
          ${STEPS.map(
            ([step, name]) => html`<li>
              <button
                type="button"
                aria-current=${step === guide.at ? "step" : nothing}
                @click=${() => this.#goTo(step)}
              >
                ${name}
              </button>
            </li>`,
          )}
        </ol>
      </nav>
      ${this.#step(guide)}
    `;
  }

  override firstUpdated(): void {
    void this.#comeIntoSight();
  }

  /** Takes a value from a gauge where a figure is asked for. */
  takeValue(text: string): void {
    this.renderRoot
      .querySelector<ReadingStep | EndFloatStep>("tightspot-read-step, tightspot-end-float-step")
      ?.takeValue(text);
  }

  /** Takes back the last step, or does it again. */
  undo(): void {
    const reading = this.renderRoot.querySelector<ReadingStep>("tightspot-read-step");
    if (reading === null) this.editor?.undo();
    else reading.undo();
  }

  redo(): void {
    const reading = this.renderRoot.querySelector<ReadingStep>("tightspot-read-step");
    if (reading === null) this.editor?.redo();
    else reading.redo();
  }

  get #guide(): GuideState | null {
    const { editor, slide, survey } = this;
    if (editor === null || slide === null || survey === null) return null;
    const guide = editor.guide ?? freshGuide(slide, survey);
    // Readings of a dial mean nothing until the travel for one division is known.
    const lacksDial = survey.method === "dial-pair" && survey.dial === undefined;
    return lacksDial && guide.at === "readings" ? { ...guide, at: "way" } : guide;
  }

  #step(guide: GuideState) {
    const { editor, editorState, slide, survey, rows, assessment } = this;
    switch (guide.at) {
      case "way":
        return html`<tightspot-way-step
          .editor=${editor}
          .editorState=${editorState}
          .slide=${slide}
          .survey=${survey}
          @tightspot-next=${() => this.#goTo("end float")}
        ></tightspot-way-step>`;
      case "end float":
        return html`<tightspot-end-float-step
          .editor=${editor}
          .editorState=${editorState}
          .guide=${guide}
          .slide=${slide}
          .survey=${survey}
          @tightspot-next=${() => this.#goTo("stations")}
        ></tightspot-end-float-step>`;
      case "stations":
        return html`<tightspot-stations-step
          .editor=${editor}
          .guide=${guide}
          .slide=${slide}
          @tightspot-next=${() => this.#goTo("readings")}
        ></tightspot-stations-step>`;
      case "readings":
        return html`<tightspot-read-step
          .editor=${editor}
          .guide=${guide}
          .slide=${slide}
          .survey=${survey}
          .rows=${rows}
          .assessment=${assessment}
          @tightspot-end-float=${() => this.#goTo("end float")}
        ></tightspot-read-step>`;
    }
  }

  async #goTo(at: GuideState["at"]): Promise<void> {
    const guide = this.#guide;
    if (guide === null) return;
    const { stations: _typed, ...typing } = guide.typing;
    this.editor?.setGuide({ ...guide, at, typing });
    await this.#comeIntoSight();
  }

  /** On a narrow screen the verdict stands above: what is to be done now is brought under the thumb. */
  async #comeIntoSight(): Promise<void> {
    if (window.matchMedia("(min-width: 64rem)").matches) return;
    // What was done goes up to the page and comes down again before it is drawn.
    await new Promise(requestAnimationFrame);
    await this.updateComplete;
    const step = this.renderRoot.querySelector<LitElement>("tightspot-read-step");
    await step?.updateComplete;
    (step ?? this).scrollIntoView({ block: "start" });
    window.dispatchEvent(new Event(SCROLLED_INTO_VIEW));
  }
}
