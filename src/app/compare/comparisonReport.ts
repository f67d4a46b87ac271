import { html, LitElement, nothing, unsafeCSS } from "lit";
import { customElement, property } from "lit/decorators.js";
import { comparedOf } from "../../report/comparison/compared.ts";
import { comparisonReport } from "../../report/comparison/comparisonReport.ts";
import { DocumentAddress } from "../files/documentAddress.ts";
import { comparisonFileName } from "../files/saveFile.ts";
import { controls } from "../ui/sharedStyles.ts";
import type { Found } from "./comparisonController.ts";
import comparisonReportCss from "./comparisonReport.css?inline";

/** The report on two surveys: it opens in a tab of its own, or is saved as a file. */
@customElement("tightspot-comparison-report")
export class ComparisonReport extends LitElement {
  static override styles = [controls, unsafeCSS(comparisonReportCss)];

  /** Set in a menu, one below the other. */
  @property({ type: Boolean }) quiet = false;
  @property({ attribute: false }) found: Found | null = null;

  readonly #address = new DocumentAddress(this);

  override render() {
    const { found, quiet } = this;
    const look = quiet ? "button quiet" : "button";
    if (found === null || !found.reply.ok) return nothing;
    const compared = comparedOf(found.inspection, found.reply.value);
    const { from, to } = compared.comparison;
    const address = this.#address.of(comparisonReport(compared));
    const name = `${comparisonFileName(found.inspection, from.id, to.id)}-report.html`;
    return html`<div class="links">
      <a class=${look} target="_blank" href=${address}>Open the comparison to print</a>
      <a class=${look} download=${name} href=${address}>Save the comparison as a file</a>
    </div>`;
  }
}
