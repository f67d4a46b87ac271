import { html, LitElement, nothing, unsafeCSS } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import type { Units } from "../../inspection/units.ts";
import type { UnitDoubt } from "../../intake/unitDoubts.ts";
import type { EditorState, PendingInput } from "../../records/editorState.ts";
import type { FieldBox } from "../editing/fieldBox.ts";
import { type Field, SETUP_FIELDS } from "../editing/fieldList.ts";
import {
  describedSlide,
  positionUnitDoubt,
  setupText,
  setupUnits,
  withPositionsIn,
  withSetupText,
  withUnits,
} from "../editing/slideSetup.ts";
import "../editing/fieldBox.ts";
import "../files/import/unitQuestion.ts";
import type { UnitSaid } from "../files/import/unitQuestion.ts";
import { controls } from "../ui/sharedStyles.ts";
import setupPageCss from "./setupPage.css?inline";

declare global {
  interface HTMLElementEventMap {
    "tightspot-pending-input": CustomEvent<PendingInput>;
    "tightspot-described": CustomEvent<EditorState>;
  }
}

const LENGTHS: readonly Field[] = [SETUP_FIELDS.from, SETUP_FIELDS.to, SETUP_FIELDS.lead, SETUP_FIELDS.limit];

/** Asks for the data of a slide that have no default. */
@customElement("tightspot-setup-page")
export class SetupPage extends LitElement {
  static override styles = [controls, unsafeCSS(setupPageCss)];

  @property({ attribute: false }) draft: PendingInput = { fields: [], rows: [] };
  /** Names of logs to import once the slide is described. */
  @property({ attribute: false }) next: readonly string[] = [];

  /** Problems are shown only after the first attempt to continue. */
  @state() private isSubmitted = false;

  /** The doubt about the unit of the waiting readings, once the travel is known. */
  @state() private doubt: UnitDoubt | undefined;

  /** Focuses the heading: it is read out, and the units come before the lengths. */
  override firstUpdated(): void {
    this.renderRoot.querySelector("h1")?.focus();
  }

  override render() {
    const described = describedSlide(this.draft);
    const problems = described.ok || !this.isSubmitted ? new Map<string, string>() : described.problems;
    const waiting = this.draft.waiting?.readings.length ?? 0;
    return html`
      <form class="sheet" novalidate @submit=${this.#submit}>
        <div>
          <h1 tabindex="-1">Which slide is it?</h1>
          <p class="lead-in">
            ${this.#waitingWords(waiting)} Everything else has a usual value, which is
            shown and can be changed later.
          </p>
        </div>
        <fieldset>
          <legend class="label">Units</legend>
          <div class="units">${this.#unitChoice("mm", "Millimetres")} ${this.#unitChoice("in", "Inches")}</div>
        </fieldset>
        <div class="lengths">
          ${LENGTHS.map(
            (field) => html`<tightspot-field
              .field=${field}
              .text=${setupText(this.draft, field.path)}
              .problem=${problems.get(field.path) ?? ""}
              .units=${setupUnits(this.draft)}
              @tightspot-typed=${({ detail }: CustomEvent<string>) =>
                this.#change(withSetupText(this.draft, field.path, detail))}
              @keydown=${this.#onKey}
            ></tightspot-field>`,
          )}
        </div>
        ${
          this.doubt === undefined
            ? nothing
            : html`<tightspot-unit-question
                .doubt=${this.doubt}
                @tightspot-unit-said=${({ detail }: CustomEvent<UnitSaid>) => this.#sayUnit(detail)}
              ></tightspot-unit-question>`
        }
        <button type="submit" class="chief">${waiting > 0 ? "Take the readings" : "Start reading"}</button>
      </form>
    `;
  }

  #waitingWords(readings: number): string {
    if (readings === 0) return "";
    const counted = readings === 1 ? "One reading is" : `${readings} readings are`;
    const after = this.next.length === 0 ? "" : `, then ${this.next.join(" and ")}`;
    return `${counted} waiting for this${after}.`;
  }

  #unitChoice(units: Units, label: string) {
    return html`<label>
      <input
        type="radio"
        name="units"
        .checked=${setupUnits(this.draft) === units}
        @change=${() => this.#change(withUnits(this.draft, units))}
      />
      ${label}
    </label>`;
  }

  #change(draft: PendingInput): void {
    this.doubt = undefined;
    this.dispatchEvent(new CustomEvent("tightspot-pending-input", { detail: draft }));
  }

  /** Enter moves to the next field; in the last one it submits. */
  #onKey(event: KeyboardEvent): void {
    if (event.key !== "Enter") return;
    event.preventDefault();
    const fields = [...this.renderRoot.querySelectorAll<FieldBox>("tightspot-field")];
    const next = fields[fields.indexOf(event.currentTarget as FieldBox) + 1];
    if (next) next.focus();
    else this.renderRoot.querySelector("form")?.requestSubmit();
  }

  /** Starts with the positions of the readings in the unit that the user gives. */
  #sayUnit({ unit }: UnitSaid): void {
    const draft = unit === this.doubt?.unit ? this.draft : withPositionsIn(this.draft, unit);
    const described = describedSlide(draft);
    if (described.ok) this.#start(described.state);
  }

  #start(editorState: EditorState): void {
    this.dispatchEvent(new CustomEvent("tightspot-described", { detail: editorState }));
  }

  async #submit(event: SubmitEvent): Promise<void> {
    event.preventDefault();
    const described = describedSlide(this.draft);
    if (described.ok) {
      this.doubt =
        described.state.inspection === null ? undefined : positionUnitDoubt(described.state.inspection);
      if (this.doubt === undefined) this.#start(described.state);
      return;
    }
    this.isSubmitted = true;
    await this.updateComplete;
    const first = LENGTHS.findIndex(({ path }) => described.problems.has(path));
    this.renderRoot.querySelectorAll<FieldBox>("tightspot-field")[first]?.focus();
  }
}
