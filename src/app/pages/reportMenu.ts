import { html, LitElement, nothing } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import type { Assessment } from "../../analysis/assessment.ts";
import type { Inspection } from "../../inspection/schema.ts";
import { askToCompare, type Found } from "../compare/comparisonController.ts";
import { controls } from "../ui/sharedStyles.ts";
import "../ui/menu.ts";

/** The menu of reports on the survey; its choices are loaded when it is first opened. */
@customElement("tightspot-report-menu")
export class ReportMenu extends LitElement {
  static override styles = controls;

  @property({ attribute: false }) inspection: Inspection | null = null;
  /** Null until the survey is assessed. */
  @property({ attribute: false }) assessment: Assessment | null = null;

  /** The comparison of two surveys; null until they are compared. */
  @property({ attribute: false }) found: Found | null = null;

  @state() private isOpen = false;

  override render() {
    const { inspection, assessment, found, isOpen } = this;
    return html`<tightspot-menu label="Report" @tightspot-menu-toggle=${this.#toggled}>
      ${
        isOpen
          ? html`<tightspot-report-choices
              .inspection=${inspection}
              .assessment=${assessment}
              .found=${found}
            ></tightspot-report-choices>`
          : nothing
      }
    </tightspot-menu>`;
  }

  #toggled({ detail }: HTMLElementEventMap["tightspot-menu-toggle"]): void {
    this.isOpen = detail;
    if (!detail) return;
    void import("./reportChoices.ts");
    if ((this.inspection?.surveys.length ?? 0) > 1) askToCompare(this);
  }
}
