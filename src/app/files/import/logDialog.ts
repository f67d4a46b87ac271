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
import { type LogRead, readLogInWorker } from "./readLogInWorker.ts";
import "./refusedRows.ts";
import { importLog, unitDoubtsOf } from "./importLog.ts";
import "./unitQuestion.ts";
import logDialogCss from "./logDialog.css?inline";
import type { UnitSaid } from "./unitQuestion.ts";

/**
 * Imports a log of readings. Shows what each column is read as and lets the user change it; asks for missing or
 * implausible units, and imports only when no question is open.
 */
@customElement("tightspot-log-dialog")
export class LogDialog extends LitElement {
  static override styles = [controls, unsafeCSS(logDialogCss)];

  @property({ attribute: false }) log: Log | null = null;
  @property({ attribute: false }) editor: InspectionEditor | null = null;

  /** How the user wants the log to be read. */
  @state() private options: CsvOptions = {};
  /** The log read with these options; null until it is read for the first time. */
  @state() private read: LogRead | null = null;
  /** How much is read, from 0 to 1; null when all is. */
  @state() private progress: number | null = 0;

  /** The columns as first read, without options of the user. */
  #detected: readonly ColumnTaken[] = [];
  #reading = new AbortController();

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has("log") || this.log === null) return;
    this.read = null;
    this.#detected = [];
    this.#read(this.log.units === undefined ? {} : { units: this.log.units });
  }

  override firstUpdated(): void {
    this.renderRoot.querySelector("dialog")?.showModal();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#reading.abort();
  }

  override render() {
    const { log, editor, read, progress } = this;
    if (log === null || editor === null) return nothing;
    return html`<dialog aria-labelledby="title" @close=${this.#close}>
      <div class="content">
        <h2 id="title">${log.name}</h2>
        ${read === null ? nothing : this.#preview(read, log, editor)}
        ${progress === null ? nothing : progressBar(progress)}
        <form method="dialog"><button class="quiet">Cancel</button></form>
      </div>
    </dialog>`;
  }

  #preview({ outcome, preview }: LogRead, log: Log, editor: InspectionEditor) {
    const csv = outcome.ok ? outcome.value : null;
    const doubts = csv === null ? [] : unitDoubtsOf(csv, editor.inspection);
    const isClear = csv?.units !== undefined && doubts.length === 0 && this.progress === null;
    return html`
      ${csv === null ? nothing : readingCount(csv)}
      ${outcome.ok ? nothing : html`<p class="wrong" role="alert">${inOneLine(outcome.problem)}</p>`}
      ${preview === null ? nothing : this.#method(csv?.method ?? this.options.method)}
      ${csv !== null && csv.units === undefined ? this.#unitsQuestion() : nothing}
      ${doubts.map(
        (doubt) => html`<tightspot-unit-question
          .doubt=${doubt}
          @tightspot-unit-said=${({ detail }: CustomEvent<UnitSaid>) => this.#setColumnUnit(detail)}
        ></tightspot-unit-question>`,
      )}
      ${
        preview === null
          ? nothing
          : html`<tightspot-log-columns
              .preview=${preview}
              .taken=${csv?.columns ?? []}
              .found=${this.#detected}
              .said=${this.options.columns ?? []}
              @tightspot-columns-said=${({ detail }: HTMLElementEventMap["tightspot-columns-said"]) =>
                this.#read({ ...this.options, columns: detail })}
            ></tightspot-log-columns>`
      }
      ${this.#decimalMarkQuestion(outcome)}
      ${
        csv === null || csv.refused.length === 0
          ? nothing
          : html`<tightspot-refused-rows .refused=${csv.refused} .log=${log.name}></tightspot-refused-rows>`
      }
      ${csv !== null && isClear ? html`<div class="choices">${this.#importButtons(csv, editor)}</div>` : nothing}
    `;
  }

  #method(chosen: Method | undefined) {
    return html`<label class="method">
      <span class="label">Way of measuring</span>
      <select @change=${this.#onMethod}>
        ${chosen === undefined ? html`<option value="" selected>Not clear</option>` : nothing}
        ${METHODS.map(
          ([value, label]) => html`<option value=${value} ?selected=${value === chosen}>${label}</option>`,
        )}
      </select>
    </label>`;
  }

  #unitsQuestion() {
    return html`<p>The log does not say what its lengths are in.</p>
      <div class="choices">
        ${this.#button("Millimetres", () => this.#setUnits("mm"))}
        ${this.#button("Inches", () => this.#setUnits("in"))}
      </div>`;
  }

  /** Asks for the decimal mark where one may be a thousands separator. */
  #decimalMarkQuestion(outcome: LogRead["outcome"]) {
    const isAsked = outcome.ok
      ? outcome.value.refused.some(({ asks }) => asks === "decimal mark")
      : "asks" in outcome && outcome.asks === "decimal mark";
    if (!isAsked) return nothing;
    return html`<p>Which mark stands before the decimals?</p>
      <div class="choices">
        ${this.#button("A point: 1.25", () => this.#read({ ...this.options, decimalMark: "." }))}
        ${this.#button("A comma: 1,25", () => this.#read({ ...this.options, decimalMark: "," }))}
      </div>`;
  }

  #importButtons(csv: CsvReadings, editor: InspectionEditor) {
    const { survey } = editor;
    if (editor.inspection === null || survey === null || editor.rows.length === 0) {
      return this.#button("Take the readings", () => this.#import(csv, editor, "add"), "chief");
    }
    return html`
      ${this.#button("As a new survey", () => this.#import(csv, editor, "new survey"), "chief")}
      ${canJoinSurvey(survey, csv) ? this.#button("Add to this survey", () => this.#import(csv, editor, "add")) : nothing}
      ${this.#button("Replace this survey’s readings", () => this.#import(csv, editor, "replace"))}
    `;
  }

  #button(label: string, act: () => void, rank = "") {
    return html`<button type="button" class=${rank} @click=${act}>${label}</button>`;
  }

  #onMethod({ target }: Event): void {
    if (!(target instanceof HTMLSelectElement)) return;
    this.#read({ ...this.options, method: target.value as Method });
  }

  #setUnits(units: Units): void {
    this.#read({ ...this.options, units });
  }

  /** Sets the unit of some columns; the others stay as they were read. */
  #setColumnUnit({ columns, unit }: UnitSaid): void {
    const taken = this.read?.outcome.ok ? this.read.outcome.value.columns : [];
    const before = this.options.columns ?? taken.map(({ as }, index) => ({ column: index + 1, as }));
    const said = before.map((each) => (columns.includes(Number(each.column)) ? { ...each, unit } : each));
    const method = unit === "divisions" ? { method: "dial-pair" as const } : {};
    this.#read({ ...this.options, columns: said, ...method });
  }

  /** Reads the log with these options. */
  #read(options: CsvOptions): void {
    const { log } = this;
    if (log === null) return;
    this.options = options;
    this.progress = 0;
    this.#reading.abort();
    this.#reading = new AbortController();
    const { signal } = this.#reading;
    const onProgress = (done: number): void => {
      this.progress = done;
    };
    void readLogInWorker(log.content, options, onProgress, signal).then((read) => {
      if (signal.aborted) return;
      if (this.#detected.length === 0 && read.outcome.ok) this.#detected = read.outcome.value.columns;
      this.read = read;
      this.progress = null;
    });
  }

  #import(csv: CsvReadings, editor: InspectionEditor, mode: ImportMode): void {
    importLog(this, this.log?.name ?? "", csv, editor, mode);
    this.renderRoot.querySelector("dialog")?.close();
  }

  #close(): void {
    this.#reading.abort();
    dispatchDone(this, "tightspot-log-done");
  }
}

function readingCount({ readings, thinned }: LogReadings) {
  const count = thinned?.count ?? readings.length;
  return html`<p><strong>${count === 1 ? "One reading" : `${count.toLocaleString("en")} readings`}</strong></p>
    ${
      thinned === null
        ? nothing
        : html`<p>
            That is more than a table of readings can hold. Imported are ${thinned.how} The survey's note says so. The
            command assesses every reading.
          </p>`
    }`;
}

function progressBar(done: number) {
  return html`<label class="progress">
    Reading, ${Math.floor(done * 100)} %
    <progress max="1" value=${done}></progress>
  </label>`;
}
