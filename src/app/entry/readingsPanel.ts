import { html, LitElement, nothing, unsafeCSS } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import type { Assessment } from "../../analysis/assessment.ts";
import type { Inspection, Survey } from "../../inspection/schema.ts";
import type { EditorState } from "../../records/editorState.ts";
import { DIAL_FIELDS, END_FLOAT_FIELD, type Field, METHOD_FIELD } from "../editing/fieldList.ts";
import type { InspectionEditor } from "../editing/inspectionEditor.ts";
import type { Row } from "../editing/rows.ts";
import "../editing/fieldGrid.ts";
import { requestOpen } from "../files/openRequest.ts";
import { BeforePrint } from "../ui/beforePrint.ts";
import { controls } from "../ui/sharedStyles.ts";
import type { GuidePanel } from "./guide/guidePanel.ts";
import type { ReadingsTable } from "./table/readingsTable.ts";
import "./table/readingsTable.ts";
import { surveyName } from "../editing/surveys.ts";
import { whenIdle } from "../ui/scheduling.ts";
import readingsPanelCss from "./readingsPanel.css?inline";
import { undoKey } from "./undoKey.ts";

/** The readings of one survey, with what has to be known to read them. */
@customElement("tightspot-readings")
export class ReadingsPanel extends LitElement {
  static override styles = [controls, unsafeCSS(readingsPanelCss)];

  @property({ attribute: false }) editor: InspectionEditor | null = null;
  @property({ attribute: false }) editorState: EditorState | null = null;
  @property({ attribute: false }) survey: Survey | null = null;
  @property({ attribute: false }) rows: readonly Row[] = [];
  @property({ attribute: false }) doubtful: ReadonlySet<number> = new Set();
  @property({ attribute: false }) assessment: Assessment | null = null;

  /** On paper, the readings stand in the table. */
  @state() private isPrinted = false;

  constructor() {
    super();
    new BeforePrint(this, () => {
      this.isPrinted = true;
    });
  }

  override connectedCallback(): void {
    super.connectedCallback();
    if ("serial" in navigator) whenIdle(() => void import("./gauge/gaugePanel.ts"));
    window.addEventListener("afterprint", this.#afterPrint);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    window.removeEventListener("afterprint", this.#afterPrint);
  }

  protected override willUpdate(): void {
    if (this.#isGuided) void import("./guide/guidePanel.ts");
  }

  override render() {
    const { editorState, survey } = this;
    if (editorState === null || editorState.inspection === null) return nothing;
    const { inspection } = editorState;
    return html`<section class="sheet" aria-labelledby="readings">
      <div class="top">
        <h2 id="readings">Readings</h2>
        <button type="button" class="quiet" @click=${() => this.editor?.addSurvey()}>New survey</button>
      </div>
      ${inspection.surveys.length < 2 ? nothing : this.#surveys(inspection)}
      ${
        survey === null
          ? html`<p>There is no survey yet. Start one with “New survey”.</p>`
          : html`${this.#views(survey, inspection)}
            ${this.#isGuided ? this.#guide(editorState, survey, inspection) : this.#readings(editorState, survey, inspection)}
            ${this.#gauge()} ${this.#fromFile()}`
      }
    </section>`;
  }

  /** Puts the cursor on a reading in the table, counted as in the file. */
  async focusReading(index: number): Promise<void> {
    if (this.#isGuided) await this.#show("table");
    void this.renderRoot.querySelector<ReadingsTable>("tightspot-readings-table")?.focusReading(index);
  }

  #surveys({ surveys }: Inspection) {
    return html`<select aria-label="Survey" @change=${this.#choose}>
      ${surveys.map(
        (survey) => html`<option value=${survey.id} ?selected=${survey.id === this.survey?.id}>
          ${surveyName(survey)}
        </option>`,
      )}
    </select>`;
  }

  /** A survey that has no readings yet begins step by step, unless the table was chosen. */
  get #isGuided(): boolean {
    const { survey } = this;
    if (this.isPrinted || survey === null || survey.method === "positioning") return false;
    return this.editor?.guide?.isOpen ?? this.rows.length === 0;
  }

  readonly #afterPrint = (): void => {
    this.isPrinted = false;
  };

  #views({ method }: Survey, { surveys }: Inspection) {
    if (surveys.length === 0 || method === "positioning") return nothing;
    const isGuided = this.#isGuided;
    return html`<div class="views screen-only" role="group" aria-label="How readings are entered">
      <button type="button" aria-pressed=${isGuided} @click=${() => this.#show("guide")}>Step by step</button>
      <button type="button" aria-pressed=${!isGuided} @click=${() => this.#show("table")}>Table</button>
    </div>`;
  }

  async #show(view: "guide" | "table"): Promise<void> {
    const { editor, survey } = this;
    const slide = this.editorState?.inspection?.slide;
    if (editor === null || survey === null || slide === undefined) return;
    const { freshGuide } = await import("./guide/freshGuide.ts");
    editor.setGuide({ ...(editor.guide ?? freshGuide(slide, survey)), isOpen: view === "guide" });
    await this.updateComplete;
  }

  #guide(editorState: EditorState, survey: Survey, { slide }: Inspection) {
    return html`<tightspot-guide
      .editor=${this.editor}
      .editorState=${editorState}
      .slide=${slide}
      .survey=${survey}
      .rows=${this.rows}
      .assessment=${this.assessment}
      @keydown=${this.#onKey}
    ></tightspot-guide>`;
  }

  #fromFile() {
    return html`<div class="screen-only">
      <button type="button" @click=${this.#chooseFile}>Readings from a file</button>
      <input
        type="file"
        hidden
        aria-label="File with readings"
        accept=".csv,.tsv,.txt,text/csv,text/plain"
        @change=${this.#chosen}
      />
    </div>`;
  }

  /** A gauge on a cable, where the browser can listen to one; not asked for where no figure is. */
  #gauge() {
    if (!("serial" in navigator)) return nothing;
    const isWanted = !this.#isGuided || ["end float", "readings"].includes(this.editor?.guide?.at ?? "");
    return html`<tightspot-gauge
      class="screen-only"
      ?hidden=${!isWanted}
      @tightspot-gauge-value=${({ detail }: CustomEvent<string>) => this.#takeValue(detail)}
    ></tightspot-gauge>`;
  }

  #takeValue(value: string): void {
    const guide = this.renderRoot.querySelector<GuidePanel>("tightspot-guide");
    if (guide !== null) guide.takeValue(value);
    else void this.renderRoot.querySelector<ReadingsTable>("tightspot-readings-table")?.takeValue(value);
  }

  /** Ctrl+Z takes back a step, unless there is something typed in a field that it can take back first. */
  #onKey(event: KeyboardEvent): void {
    const way = undoKey(event);
    const [inner] = event.composedPath();
    const isTyping =
      (inner instanceof HTMLInputElement || inner instanceof HTMLTextAreaElement) && inner.value !== "";
    if (way === null || isTyping) return;
    event.preventDefault();
    this.renderRoot.querySelector<GuidePanel>("tightspot-guide")?.[way]();
  }

  #readings(editorState: EditorState, survey: Survey, { slide }: Inspection) {
    return html`
      ${this.#fields(editorState, survey, [METHOD_FIELD])}
      ${survey.method === "dial-pair" ? this.#fields(editorState, survey, DIAL_FIELDS) : nothing}
      <tightspot-readings-table
        .editor=${this.editor}
        .survey=${survey}
        .rows=${this.rows}
        .slide=${slide}
        .doubtful=${this.doubtful}
      ></tightspot-readings-table>
      <p class="hint screen-only">
        <kbd>Enter</kbd> and the arrows go on, <kbd>Ctrl</kbd> <kbd>Z</kbd> takes back, <kbd>"</kbd> repeats the figure
        above; a row’s number leads to striking it. Read a station again in a row of its own. A block from a spreadsheet
        can be pasted into any cell.
      </p>
      ${this.#fields(editorState, survey, [END_FLOAT_FIELD])}
    `;
  }

  #fields(editorState: EditorState, survey: Survey, fields: readonly Field[]) {
    return html`<tightspot-field-grid
      .editor=${this.editor}
      .editorState=${editorState}
      .survey=${survey}
      .of=${survey.id}
      .fields=${fields}
    ></tightspot-field-grid>`;
  }

  #choose({ target }: Event): void {
    if (target instanceof HTMLSelectElement) this.editor?.chooseSurvey(target.value);
  }

  #chooseFile(): void {
    this.renderRoot.querySelector<HTMLInputElement>("input[type=file]")?.click();
  }

  #chosen({ target }: Event): void {
    if (!(target instanceof HTMLInputElement)) return;
    requestOpen(this, { files: [...(target.files ?? [])] });
    target.value = "";
  }
}
