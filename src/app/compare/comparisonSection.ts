import { html, LitElement, nothing, unsafeCSS } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import type { SurveyChoice } from "../../analysis/comparison/chooseSurveys.ts";
import type { Inspection } from "../../inspection/schema.ts";
import type { InspectionEditor } from "../editing/inspectionEditor.ts";
import { isOpen } from "../ui/isOpen.ts";
import { controls, foldNote, sectionFold } from "../ui/sharedStyles.ts";
import { askToCompare, type Found } from "./comparisonController.ts";
import comparisonSectionCss from "./comparisonSection.css?inline";

/** Two surveys against each other, and running in, behind their heading; loaded when it is first opened. */
@customElement("tightspot-comparison-section")
export class ComparisonSection extends LitElement {
  static override styles = [controls, sectionFold, foldNote, unsafeCSS(comparisonSectionCss)];

  @property({ attribute: false }) editor: InspectionEditor | null = null;
  @property({ attribute: false }) inspection: Inspection | null = null;
  @property({ attribute: false }) choice: SurveyChoice = {};
  @property({ attribute: false }) found: Found | null = null;
  @property({ type: Boolean }) busy = false;

  @state() private isOpen = false;

  override render() {
    const { editor, inspection, choice, found, busy, isOpen } = this;
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
              .editor=${editor}
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
    this.isOpen = isOpen(event);
    if (!this.isOpen) return;
    void import("./comparisonPanel.ts");
    askToCompare(this);
  }
}
