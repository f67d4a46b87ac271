import { html, LitElement, nothing, unsafeCSS } from "lit";
import { customElement, property } from "lit/decorators.js";
import { fileNameFor } from "../../../inspection/fileName.ts";
import type { Refusal } from "../../../intake/refusal.ts";
import { refusedCsv } from "../../../intake/refusedCsv.ts";
import { controls } from "../../ui/sharedStyles.ts";
import { decimalMark, download } from "../download.ts";
import refusedRowsCss from "./refusedRows.css?inline";

/** The number listed; the CSV has all. */
const LISTED = 50;

/** The rows and cells of a log that cannot be read, each with its line and why. */
@customElement("tightspot-refused-rows")
export class RefusedRows extends LitElement {
  static override styles = [controls, unsafeCSS(refusedRowsCss)];

  @property({ attribute: false }) refused: readonly Refusal[] = [];
  /** The name of the log. */
  @property() log = "";

  override render() {
    const { refused } = this;
    const count = refused.length === 1 ? "One row or cell" : `${refused.length} rows or cells`;
    const more = refused.length - LISTED;
    return html`<p class="wrong">${count} cannot be read and would be left out:</p>
      <ul>
        ${refused.slice(0, LISTED).map(
          ({ row, text, reason, cure }) => html`<li>
            <strong>Line ${row}</strong> <code>${text}</code>
            <p>${reason}. ${cure}</p>
          </li>`,
        )}
      </ul>
      ${more > 0 ? html`<p>And ${more} more, which are in the list as CSV.</p>` : nothing}
      <button type="button" @click=${this.#save}>Save this list as CSV</button>`;
  }

  #save(): void {
    const name = fileNameFor(this.log.replace(/\.\w+$/, ""), "log");
    download(`${name}-not-read.csv`, refusedCsv(this.refused, decimalMark()), "text/csv");
  }
}
