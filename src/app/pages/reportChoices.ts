import { html, LitElement, nothing, type PropertyValues, unsafeCSS } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import type { Assessment } from "../../analysis/assessment.ts";
import type { Inspection } from "../../inspection/schema.ts";
import { selfContained } from "../../records/pictures.ts";
import { assessmentReport } from "../../report/assessment/assessmentReport.ts";
import type { Found } from "../compare/comparisonController.ts";
import "../compare/comparisonReport.ts";
import { DocumentAddress } from "../files/documentAddress.ts";
import { surveyFileName } from "../files/saveFile.ts";
import { noteVerdict } from "../history/noteVerdict.ts";
import { controls } from "../ui/sharedStyles.ts";
import reportChoicesCss from "./reportChoices.css?inline";

/** Links that open the report in another tab or save it as a file. */
@customElement("tightspot-report-choices")
export class ReportChoices extends LitElement {
  static override styles = [controls, unsafeCSS(reportChoicesCss)];

  @property({ attribute: false }) inspection: Inspection | null = null;
  @property({ attribute: false }) assessment: Assessment | null = null;

  @property({ attribute: false }) found: Found | null = null;

  /** The inspection with its photographs, which the report contains, and the inspection that it was made from. */
  @state() private whole: { readonly of: Inspection; readonly data: Inspection } | null = null;

  readonly #address = new DocumentAddress(this);

  protected override willUpdate(changed: PropertyValues<this>): void {
    const { inspection } = this;
    if (!changed.has("inspection") || inspection === null) return;
    void selfContained(inspection).then(({ data }) => {
      if (inspection === this.inspection) this.whole = { of: inspection, data };
    });
  }

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
    const { inspection, whole, assessment } = this;
    if (inspection === null || assessment === null) {
      return html`<p>There is a report once the readings of this survey are assessed.</p>`;
    }
    if (whole?.of !== inspection) return nothing;
    const address = this.#address.of(assessmentReport(whole.data, assessment));
    const name = `${surveyFileName(inspection, assessment.survey)}-report.html`;
    const note = () => noteVerdict(this);
    return html`<a class="button quiet" target="_blank" href=${address} @click=${note}>Open to print</a>
      <a class="button quiet" download=${name} href=${address} @click=${note}>Save as a file</a>`;
  }
}
