import { css, html, LitElement } from "lit";
import { customElement, property } from "lit/decorators.js";
import type { Assessment } from "../../analysis/assessment.ts";
import type { Survey } from "../../inspection/schema.ts";
import type { Work } from "../../records/record.ts";
import { notify } from "../shell/notice.ts";
import { controls } from "../style/controls.ts";
import { saveProfile, saveReadings } from "./saveFile.ts";

/** What can be saved for a spreadsheet. */
@customElement("tightspot-csv-menu")
export class CsvMenu extends LitElement {
  static override styles = [
    controls,
    css`
      details {
        position: relative;
      }

      summary {
        display: flex;
        align-items: center;
        padding: 0.5rem clamp(0.5rem, 2vw, 1rem);
        border-radius: var(--round);
        color: var(--ink);
        font-weight: 600;
        line-height: 1.2;
        list-style: none;
      }

      summary::-webkit-details-marker {
        display: none;
      }

      summary::after {
        content: "▾";
        margin-left: 0.375rem;
      }

      summary:hover {
        background: var(--wash);
      }

      .choices {
        position: absolute;
        right: 0;
        z-index: 5;
        display: grid;
        gap: 0.25rem;
        width: max-content;
        padding: 0.375rem;
        border: 1.5px solid var(--ink);
        border-radius: var(--round);
        background: var(--sheet);
        box-shadow: var(--shadow);
      }
    `,
  ];

  @property({ attribute: false }) work: Work | null = null;
  @property({ attribute: false }) survey: Survey | null = null;
  /** Null as long as the survey is not assessed. */
  @property({ attribute: false }) assessment: Assessment | null = null;

  override render() {
    return html`<details @keydown=${this.#onKey}>
      <summary>Save as CSV</summary>
      <div class="choices">
        <button type="button" class="quiet" @click=${this.#readings}>Readings of this survey</button>
        <button type="button" class="quiet" ?disabled=${this.assessment === null} @click=${this.#profile}>
          Profile
        </button>
      </div>
    </details>`;
  }

  #readings(): void {
    const { work, survey } = this;
    if (work?.inspection == null || survey === null) return;
    saveReadings(work.inspection, survey);
    this.#close();
    const left = work.draft.rows.filter((row) => row.survey === survey.id).length;
    if (left === 0) return;
    const text = `The CSV holds all but ${left === 1 ? "one reading" : `${left} readings`} that cannot be read yet, marked in red.`;
    notify(this, { tone: "wrong", text });
  }

  #profile(): void {
    const { work, assessment } = this;
    if (work?.inspection == null || assessment === null) return;
    saveProfile(work.inspection, assessment);
    this.#close();
  }

  #onKey({ key }: KeyboardEvent): void {
    if (key === "Escape") this.#close();
  }

  #close(): void {
    const details = this.renderRoot.querySelector("details");
    if (details === null) return;
    details.open = false;
    details.querySelector("summary")?.focus();
  }
}
