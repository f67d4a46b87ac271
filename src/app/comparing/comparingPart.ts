import { css, html, LitElement, nothing } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import type { Choice } from "../../analysis/comparison/choice.ts";
import type { Inspection } from "../../inspection/schema.ts";
import type { Desk } from "../editing/desk.ts";
import { isOpened } from "../shell/isOpened.ts";
import { controls } from "../style/controls.ts";
import { aboutFold, partFold } from "../style/fold.ts";
import { askToCompare, type Found } from "./comparing.ts";

/** Two surveys against each other, and running in, behind their heading; loaded when it is first opened. */
@customElement("tightspot-comparing-part")
export class ComparingPart extends LitElement {
  static override styles = [
    controls,
    partFold,
    aboutFold,
    css`
      .sheet {
        padding: 0 clamp(0.75rem, 2vw, 1.75rem);
      }

      @media print {
        details:not([open]),
        summary::before,
        .about {
          display: none;
        }
      }
    `,
  ];

  @property({ attribute: false }) desk: Desk | null = null;
  @property({ attribute: false }) inspection: Inspection | null = null;
  @property({ attribute: false }) choice: Choice = {};
  @property({ attribute: false }) found: Found | null = null;
  @property({ type: Boolean }) busy = false;

  @state() private isOpen = false;

  override render() {
    const { desk, inspection, choice, found, busy, isOpen } = this;
    if (inspection === null || inspection.surveys.length === 0) return nothing;
    const several = inspection.surveys.length > 1;
    return html`<details class="sheet" @toggle=${this.#toggled}>
      <summary>
        <h2>Before and after</h2>
        <span class="about">
          ${several ? "two surveys against each other, and running in" : "once this slide is surveyed again"}
        </span>
      </summary>
      ${
        isOpen
          ? html`<tightspot-comparing
              .desk=${desk}
              .inspection=${inspection}
              .choice=${choice}
              .found=${found}
              ?busy=${busy}
            ></tightspot-comparing>`
          : nothing
      }
    </details>`;
  }

  #toggled(event: Event): void {
    this.isOpen = isOpened(event);
    if (!this.isOpen) return;
    void import("./comparingPanel.ts");
    askToCompare(this);
  }
}
