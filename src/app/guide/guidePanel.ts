import { css, html, LitElement, nothing } from "lit";
import { customElement, property } from "lit/decorators.js";
import type { Assessment } from "../../analysis/assessment.ts";
import type { Slide, Survey } from "../../inspection/schema.ts";
import type { Guide, Work } from "../../records/record.ts";
import type { Desk } from "../editing/desk.ts";
import type { Row } from "../editing/rows.ts";
import { controls } from "../style/controls.ts";
import { IN_SIGHT } from "../workbench/steadyTyping.ts";
import type { EndFloatStep } from "./endFloatStep.ts";
import "./endFloatStep.ts";
import { freshGuide } from "./freshGuide.ts";
import type { ReadStep } from "./readStep.ts";
import "./readStep.ts";
import "./stationsStep.ts";
import "./wayStep.ts";

const STEPS = [
  ["way", "Way"],
  ["end float", "End float"],
  ["stations", "Stations"],
  ["readings", "Read"],
] as const;

/** Measuring step by step: the way, the end float, the stations, and then one reading after the other. */
@customElement("tightspot-guide")
export class GuidePanel extends LitElement {
  static override styles = [
    controls,
    css`
      :host {
        display: grid;
        grid-template-columns: minmax(0, 1fr);
        gap: 0.875rem;
      }

      ol {
        display: grid;
        grid-template-columns: repeat(4, auto);
        gap: 2px;
      }

      ol button {
        width: 100%;
        padding: 0 0.125rem;
        border: 0;
        border-bottom: 4px solid var(--rule);
        border-radius: 0;
        background: transparent;
        color: var(--ink-pale);
        font-size: var(--small);
      }

      ol [aria-current] {
        border-color: var(--ink);
        color: var(--ink-strong);
        font-weight: 700;
      }
    `,
  ];

  @property({ attribute: false }) desk: Desk | null = null;
  @property({ attribute: false }) work: Work | null = null;
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
      .querySelector<ReadStep | EndFloatStep>("tightspot-read-step, tightspot-end-float-step")
      ?.takeValue(text);
  }

  /** Takes back the last step, or does it again. */
  undo(): void {
    const reading = this.renderRoot.querySelector<ReadStep>("tightspot-read-step");
    if (reading === null) this.desk?.undo();
    else reading.undo();
  }

  redo(): void {
    const reading = this.renderRoot.querySelector<ReadStep>("tightspot-read-step");
    if (reading === null) this.desk?.redo();
    else reading.redo();
  }

  get #guide(): Guide | null {
    const { desk, slide, survey } = this;
    if (desk === null || slide === null || survey === null) return null;
    const guide = desk.guide ?? freshGuide(slide, survey);
    // Readings of a dial mean nothing until the travel for one division is known.
    const lacksDial = survey.method === "dial-pair" && survey.dial === undefined;
    return lacksDial && guide.at === "readings" ? { ...guide, at: "way" } : guide;
  }

  #step(guide: Guide) {
    const { desk, work, slide, survey, rows, assessment } = this;
    switch (guide.at) {
      case "way":
        return html`<tightspot-way-step
          .desk=${desk}
          .work=${work}
          .slide=${slide}
          .survey=${survey}
          @tightspot-next=${() => this.#goTo("end float")}
        ></tightspot-way-step>`;
      case "end float":
        return html`<tightspot-end-float-step
          .desk=${desk}
          .work=${work}
          .guide=${guide}
          .slide=${slide}
          .survey=${survey}
          @tightspot-next=${() => this.#goTo("stations")}
        ></tightspot-end-float-step>`;
      case "stations":
        return html`<tightspot-stations-step
          .desk=${desk}
          .guide=${guide}
          .slide=${slide}
          @tightspot-next=${() => this.#goTo("readings")}
        ></tightspot-stations-step>`;
      case "readings":
        return html`<tightspot-read-step
          .desk=${desk}
          .guide=${guide}
          .slide=${slide}
          .survey=${survey}
          .rows=${rows}
          .assessment=${assessment}
          @tightspot-end-float=${() => this.#goTo("end float")}
        ></tightspot-read-step>`;
    }
  }

  async #goTo(at: Guide["at"]): Promise<void> {
    const guide = this.#guide;
    if (guide === null) return;
    const { stations: _typed, ...typing } = guide.typing;
    this.desk?.guideAs({ ...guide, at, typing });
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
    window.dispatchEvent(new Event(IN_SIGHT));
  }
}
