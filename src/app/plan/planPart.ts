import { css, html, LitElement, nothing } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import type { Slide, Survey } from "../../inspection/schema.ts";
import type { Desk } from "../editing/desk.ts";
import type { Row } from "../editing/rows.ts";
import { isOpened } from "../shell/isOpened.ts";
import { controls } from "../style/controls.ts";
import { aboutFold, partFold } from "../style/fold.ts";

/** The measuring plan behind its heading; it is loaded when it is first opened. */
@customElement("tightspot-plan-part")
export class PlanPart extends LitElement {
  static override styles = [
    controls,
    partFold,
    aboutFold,
    css`
      :host {
        margin-bottom: var(--gap);
      }

      .sheet {
        padding: 0 clamp(0.75rem, 2vw, 1.25rem);
      }

      @media print {
        :host {
          display: none;
        }
      }
    `,
  ];

  @property({ attribute: false }) desk: Desk | null = null;
  @property({ attribute: false }) slide: Slide | null = null;
  @property({ attribute: false }) survey: Survey | null = null;
  @property({ attribute: false }) rows: readonly Row[] = [];

  @state() private isOpen = false;

  override render() {
    const { desk, slide, survey, rows, isOpen } = this;
    if (slide === null) return nothing;
    return html`<details class="sheet" @toggle=${this.#toggled}>
      <summary>
        <h2>Measuring plan</h2>
        <span class="about">where to read, and a sheet to write on</span>
      </summary>
      ${
        isOpen
          ? html`<tightspot-plan .desk=${desk} .slide=${slide} .survey=${survey} .rows=${rows}></tightspot-plan>`
          : nothing
      }
    </details>`;
  }

  #toggled(event: Event): void {
    this.isOpen = isOpened(event);
    if (this.isOpen) void import("./planPanel.ts");
  }
}
