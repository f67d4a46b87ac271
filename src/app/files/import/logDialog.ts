import { html, LitElement, nothing, type PropertyValues, unsafeCSS } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { inOneLine } from "../../../inspection/problem.ts";
import type { Method } from "../../../inspection/schema.ts";
import type { Units } from "../../../inspection/units.ts";
import type { ColumnTaken } from "../../../intake/columnsTaken.ts";
import type { CsvReadings } from "../../../intake/readCsv.ts";
import type { CsvOptions } from "../../../intake/understanding.ts";
import { METHODS } from "../../editing/fieldList.ts";
import { canJoinSurvey } from "../../editing/importReadings.ts";
import type { ImportMode, InspectionEditor } from "../../editing/inspectionEditor.ts";
import { controls } from "../../ui/sharedStyles.ts";
import { dispatchDone } from "../openRequest.ts";
import "./logColumns.ts";
import type { Log } from "../readFile.ts";
import type { LogReadings } from "./logMessages.ts";
import { unitDoubtsOf } from "./readLog.ts";
import { type LogRead, readLogInWorker } from "./readLogInWorker.ts";
import "./refusedRows.ts";
import { importLog } from "./takeLog.ts";
import "./unitQuestion.ts";
import logDialogCss from "./logDialog.css?inline";
import type { UnitSaid } from "./unitQuestion.ts";

/**
 * Takes a log of readings in. It shows what every column was taken as and lets the reader change it, asks what has to
 * be asked, such as units that the log does not tell or that make no sense, and takes nothing before that is settled.
 */
@customElement("tightspot-log-dialog")
export class LogDialog extends LitElement {
  static override styles = [controls, unsafeCSS(logDialogCss)];

  @property({ attribute: false }) log: Log | null = null;
  @property({ attribute: false }) editor: InspectionEditor | null = null;

  /** What the reader has said of the log. */
  @state() private said: CsvOptions = {};
  /** The log as it reads with that; null until it is read for the first time. */
  @state() private read: LogRead | null = null;
  /** How much is read, from 0 to 1; null when all is. */
  @state() private done: number | null = 0;

  /** The columns as they were first taken. */
  #found: readonly ColumnTaken[] = [];
  #reading = new AbortController();

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has("log") || this.log === null) return;
    this.read = null;
    this.#found = [];
    this.#say(this.log.units === undefined ? {} : { units: this.log.units });
  }

  override firstUpdated(): void {
    this.renderRoot.querySelector("dialog")?.showModal();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#reading.abort();
  }

  override render() {
    const { log, editor, read, done } = this;
    if (log === null || editor === null) return nothing;
    return html`<dialog aria-labelledby="title" @close=${this.#close}>
      <div class="content">
        <h2 id="title">${log.name}</h2>
        ${read === null ? nothing : this.#preview(read, log, editor)}
        ${done === null ? nothing : progress(done)}
        <form method="dialog"><button class="quiet">Cancel</button></form>
      </div>
    </dialog>`;
  }

  #preview({ outcome, preview }: LogRead, log: Log, editor: InspectionEditor) {
    const csv = outcome.ok ? outcome.value : null;
    const doubts = csv === null ? [] : unitDoubtsOf(csv, editor.inspection);
    const isSettled = csv?.units !== undefined && doubts.length === 0 && this.done === null;
    return html`
      ${csv === null ? nothing : countedIn(csv)}
      ${outcome.ok ? nothing : html`<p class="wrong" role="alert">${inOneLine(outcome.problem)}</p>`}
      ${preview === null ? nothing : this.#method(csv?.method ?? this.said.method)}
      ${csv !== null && csv.units === undefined ? this.#unitsAsked() : nothing}
      ${doubts.map(
        (doubt) => html`<tightspot-unit-question
          .doubt=${doubt}
          @tightspot-unit-said=${({ detail }: CustomEvent<UnitSaid>) => this.#sayUnit(detail)}
        ></tightspot-unit-question>`,
      )}
      ${
        preview === null
          ? nothing
          : html`<tightspot-log-columns
              .preview=${preview}
              .taken=${csv?.columns ?? []}
              .found=${this.#found}
              .said=${this.said.columns ?? []}
              @tightspot-columns-said=${({ detail }: HTMLElementEventMap["tightspot-columns-said"]) =>
                this.#say({ ...this.said, columns: detail })}
            ></tightspot-log-columns>`
      }
      ${this.#markAsked(outcome)}
      ${
        csv === null || csv.refused.length === 0
          ? nothing
          : html`<tightspot-refused-rows .refused=${csv.refused} .log=${log.name}></tightspot-refused-rows>`
      }
      ${csv !== null && isSettled ? html`<div class="choices">${this.#ways(csv, editor)}</div>` : nothing}
    `;
  }

  #method(chosen: Method | undefined) {
    return html`<label class="method">
      <span class="label">Way of measuring</span>
      <select @change=${this.#methodChanged}>
        ${chosen === undefined ? html`<option value="" selected>Not settled</option>` : nothing}
        ${METHODS.map(
          ([value, label]) => html`<option value=${value} ?selected=${value === chosen}>${label}</option>`,
        )}
      </select>
    </label>`;
  }

  #unitsAsked() {
    return html`<p>The log does not say what its lengths are in.</p>
      <div class="choices">
        ${this.#button("Millimetres", () => this.#sayUnits("mm"))}
        ${this.#button("Inches", () => this.#sayUnits("in"))}
      </div>`;
  }

  /** Where a mark may set off thousands or stand before decimals, which it is. */
  #markAsked(outcome: LogRead["outcome"]) {
    const isAsked = outcome.ok
      ? outcome.value.refused.some(({ asks }) => asks === "decimal mark")
      : "asks" in outcome && outcome.asks === "decimal mark";
    if (!isAsked) return nothing;
    return html`<p>Which mark stands before the decimals?</p>
      <div class="choices">
        ${this.#button("A point: 1.25", () => this.#say({ ...this.said, decimalMark: "." }))}
        ${this.#button("A comma: 1,25", () => this.#say({ ...this.said, decimalMark: "," }))}
      </div>`;
  }

  #ways(csv: CsvReadings, editor: InspectionEditor) {
    const { survey } = editor;
    if (editor.inspection === null || survey === null || editor.rows.length === 0) {
      return this.#button("Take the readings", () => this.#take(csv, editor, "add"), "chief");
    }
    return html`
      ${this.#button("As a new survey", () => this.#take(csv, editor, "new survey"), "chief")}
      ${canJoinSurvey(survey, csv) ? this.#button("Add to this survey", () => this.#take(csv, editor, "add")) : nothing}
      ${this.#button("Replace this survey’s readings", () => this.#take(csv, editor, "replace"))}
    `;
  }

  #button(label: string, act: () => void, rank = "") {
    return html`<button type="button" class=${rank} @click=${act}>${label}</button>`;
  }

  #methodChanged({ target }: Event): void {
    if (!(target instanceof HTMLSelectElement)) return;
    this.#say({ ...this.said, method: target.value as Method });
  }

  #sayUnits(units: Units): void {
    this.#say({ ...this.said, units });
  }

  /** Gives columns their unit; all others stay as they were taken. */
  #sayUnit({ columns, unit }: UnitSaid): void {
    const taken = this.read?.outcome.ok ? this.read.outcome.value.columns : [];
    const before = this.said.columns ?? taken.map(({ as }, index) => ({ column: index + 1, as }));
    const said = before.map((each) => (columns.includes(Number(each.column)) ? { ...each, unit } : each));
    const method = unit === "divisions" ? { method: "dial-pair" as const } : {};
    this.#say({ ...this.said, columns: said, ...method });
  }

  /** Reads the log as the reader says that it is to be read. */
  #say(said: CsvOptions): void {
    const { log } = this;
    if (log === null) return;
    this.said = said;
    this.done = 0;
    this.#reading.abort();
    this.#reading = new AbortController();
    const { signal } = this.#reading;
    const told = (done: number): void => {
      this.done = done;
    };
    void readLogInWorker(log.content, said, told, signal).then((read) => {
      if (signal.aborted) return;
      if (this.#found.length === 0 && read.outcome.ok) this.#found = read.outcome.value.columns;
      this.read = read;
      this.done = null;
    });
  }

  #take(csv: CsvReadings, editor: InspectionEditor, how: ImportMode): void {
    importLog(this, this.log?.name ?? "", csv, editor, how);
    this.renderRoot.querySelector("dialog")?.close();
  }

  #close(): void {
    this.#reading.abort();
    dispatchDone(this, "tightspot-log-done");
  }
}

function countedIn({ readings, thinned }: LogReadings) {
  const count = thinned?.count ?? readings.length;
  return html`<p><strong>${count === 1 ? "One reading" : `${count.toLocaleString("en")} readings`}</strong></p>
    ${
      thinned === null
        ? nothing
        : html`<p>
            That is more than a table of readings can hold. Taken are ${thinned.how} The survey's note keeps this. The
            command assesses every reading.
          </p>`
    }`;
}

function progress(done: number) {
  return html`<label class="progress">
    Reading, ${Math.floor(done * 100)} %
    <progress max="1" value=${done}></progress>
  </label>`;
}
