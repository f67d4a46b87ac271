import { html, LitElement } from "lit";
import { customElement, property } from "lit/decorators.js";
import type { Assessment } from "../../analysis/assessment.ts";
import type { Survey } from "../../inspection/schema.ts";
import type { EditorState } from "../../records/editorState.ts";
import { notify } from "../ui/notice.ts";
import { controls } from "../ui/sharedStyles.ts";
import "../ui/menu.ts";
import { saveProfile, saveReadings } from "../files/saveFile.ts";
import type { Menu } from "../ui/menu.ts";

/** The menu of what can be saved as CSV. */
@customElement("tightspot-csv-menu")
export class CsvMenu extends LitElement {
  static override styles = controls;

  @property({ attribute: false }) editorState: EditorState | null = null;
  @property({ attribute: false }) survey: Survey | null = null;
  /** Null until the survey is assessed. */
  @property({ attribute: false }) assessment: Assessment | null = null;

  override render() {
    return html`<tightspot-menu label="Save as CSV">
      <button type="button" class="quiet" @click=${this.#readings}>Readings of this survey</button>
      <button type="button" class="quiet" ?disabled=${this.assessment === null} @click=${this.#profile}>
        Profile
      </button>
    </tightspot-menu>`;
  }

  #readings(): void {
    const { editorState, survey } = this;
    if (editorState?.inspection == null || survey === null) return;
    saveReadings(editorState.inspection, survey);
    this.#close();
    const left = editorState.draft.rows.filter((row) => row.survey === survey.id).length;
    if (left === 0) return;
    const text = `The CSV holds all but ${left === 1 ? "one reading" : `${left} readings`} that cannot be read yet, marked in red.`;
    notify(this, { tone: "wrong", text });
  }

  #profile(): void {
    const { editorState, assessment } = this;
    if (editorState?.inspection == null || assessment === null) return;
    saveProfile(editorState.inspection, assessment);
    this.#close();
  }

  #close(): void {
    this.renderRoot.querySelector<Menu>("tightspot-menu")?.close();
  }
}
