import { css, html, LitElement, nothing } from "lit";
import { customElement, property } from "lit/decorators.js";
import type { Assessment } from "../../analysis/assessment.ts";
import type { Inspection } from "../../inspection/schema.ts";
import { assessmentReport } from "../../report/assessment/assessmentReport.ts";
import type { Found } from "../comparing/comparing.ts";
import "../comparing/reportLinks.ts";
import { DocumentAddress } from "../shell/documentAddress.ts";
import { controls } from "../style/controls.ts";
import { surveyFileName } from "./saveFile.ts";

/** What can be done with the report: it opens in a tab of its own, or is saved as a file. */
@customElement("tightspot-report-choices")
export class ReportChoices extends LitElement {
  static override styles = [
    controls,
    css`
      .choices {
        display: grid;
        gap: 0.25rem;
      }

      tightspot-comparison-report {
        padding-top: 0.25rem;
        border-top: 1px solid var(--rule);
      }

      p {
        max-width: 18rem;
        padding: 0.5rem 0.75rem;
      }
    `,
  ];

  @property({ attribute: false }) inspection: Inspection | null = null;
  @property({ attribute: false }) assessment: Assessment | null = null;

  @property({ attribute: false }) found: Found | null = null;

  readonly #address = new DocumentAddress(this);

  override render() {
    const { found } = this;
    return html`<div class="choices">
      ${this.#ofSurvey()}
      ${
        found?.reply.ok === true
          ? html`<tightspot-comparison-report quiet .found=${found}></tightspot-comparison-report>`
          : nothing
      }
    </div>`;
  }

  #ofSurvey() {
    const { inspection, assessment } = this;
    if (inspection === null || assessment === null) {
      return html`<p>There is a report once the readings of this survey are assessed.</p>`;
    }
    const address = this.#address.of(assessmentReport(inspection, assessment));
    const name = `${surveyFileName(inspection, assessment.survey)}-report.html`;
    return html`<a class="button quiet" target="_blank" href=${address}>Open to print</a>
      <a class="button quiet" download=${name} href=${address}>Save as a file</a>`;
  }
}
