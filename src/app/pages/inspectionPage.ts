import { html, LitElement, nothing, type PropertyValues, unsafeCSS } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import type { Assessment } from "../../analysis/assessment.ts";
import type { RetainedDraws } from "../../analysis/decide/whatIf.ts";
import type { Survey } from "../../inspection/schema.ts";
import type { SaveStatus } from "../../records/autosave.ts";
import { awaitsReading, type EditorState } from "../../records/editorState.ts";
import { ComparisonController } from "../compare/comparisonController.ts";
import { type Answer, type Assessor, createAssessor } from "../results/worker/assessInWorker.ts";
import "../compare/comparisonSection.ts";
import type { InspectionEditor } from "../editing/inspectionEditor.ts";
import { timeNow } from "../editing/localTime.ts";
import type { Row } from "../editing/rows.ts";
import { givenVerdict } from "../history/givenVerdict.ts";
import "../history/historySection.ts";
import "../entry/plan/planSection.ts";
import type { ReadingsPanel } from "../entry/readingsPanel.ts";
import "../entry/readingsPanel.ts";
import "../results/evidence/evidencePanel.ts";
import { headline } from "../results/headline.ts";
import "../results/verdictPanel.ts";
import { DeferredRender } from "../ui/deferredRender.ts";
import { notify } from "../ui/notice.ts";
import { controls } from "../ui/sharedStyles.ts";
import "./csvMenu.ts";
import "./saveStatusLine.ts";
import "./reportMenu.ts";
import { saveFile } from "../files/saveFile.ts";
import { ScrollAnchor } from "../ui/scrollAnchor.ts";
import "./titleBlock.ts";
import inspectionPageCss from "./inspectionPage.css?inline";

/** One inspection: its title block, its readings and their assessment. */
@customElement("tightspot-inspection")
export class InspectionPage extends LitElement {
  static override styles = [controls, unsafeCSS(inspectionPageCss)];

  @property({ attribute: false }) editor: InspectionEditor | null = null;
  @property({ attribute: false }) editorState: EditorState | null = null;
  @property({ attribute: false }) survey: Survey | null = null;
  @property({ attribute: false }) rows: readonly Row[] = [];
  @property({ attribute: false }) saveStatus: SaveStatus = { state: "saving" };

  @state() private answer: Answer | null = null;
  @state() private draws: RetainedDraws | null = null;
  @state() private isBusy = false;

  #assessor: Assessor | null = null;
  /** The input of the last assessment: input that changes nothing needs no new one. */
  #assessed = "";

  readonly #comparing = new ComparisonController(this);
  readonly #stages = new DeferredRender(this, 2);

  constructor() {
    super();
    this.addEventListener("tightspot-compare", () => this.#comparing.want());
    this.addEventListener("tightspot-compare-choice", ({ detail }) => this.#comparing.choose(detail));
    const part = (name: string) => () => this.renderRoot.querySelector(name);
    this.addEventListener("tightspot-note-verdict", () => this.#noteVerdict());
    this.addController(new ScrollAnchor(part("tightspot-verdict"), part("tightspot-readings")));
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#assessor?.close();
    this.#assessor = null;
    this.#assessed = "";
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    const before = changed.get("survey");
    if (before && before.id !== this.survey?.id) {
      if (!changed.has("editor")) this.#noteVerdictOn(before);
      this.answer = null;
    }
    if (changed.has("editorState") || changed.has("survey")) this.#assess();
    if (changed.has("editorState")) this.#comparing.about(this.editorState?.inspection ?? null);
  }

  override render() {
    const { editor, editorState, survey, rows, saveStatus, answer } = this;
    const { choice, found, isBusy } = this.#comparing;
    const { stage } = this.#stages;
    const inspection = editorState?.inspection ?? null;
    const assessment = answer?.ok ? answer.value : null;
    const title = assessment === null ? "" : headline(assessment);
    return html`
      <tightspot-title-block .editor=${editor} .editorState=${editorState} .survey=${survey}></tightspot-title-block>
      <div class="bar">
        <tightspot-save-status
          class=${saveStatus.state === "not saved" ? "alarm" : ""}
          .saveStatus=${saveStatus}
          ?in-file=${editorState?.inFile === true}
        ></tightspot-save-status>
        <button type="button" class="quiet" @click=${this.#saveFile}>Save a file</button>
        <tightspot-csv-menu .editorState=${editorState} .survey=${survey} .assessment=${this.isBusy ? null : assessment}></tightspot-csv-menu>
        <tightspot-report-menu
          .inspection=${inspection}
          .assessment=${this.isBusy ? null : assessment}
          .found=${isBusy ? null : found}
        ></tightspot-report-menu>
      </div>
      <tightspot-plan-section
        .editor=${editor}
        .slide=${inspection?.slide ?? null}
        .survey=${survey}
        .rows=${rows}
      ></tightspot-plan-section>
      <div class="parts" @tightspot-go-to-reading=${this.#goToReading}>
        <tightspot-verdict
          .inspection=${inspection}
          .survey=${survey}
          .answer=${answer}
          .busy=${this.isBusy}
          .editor=${editor}
          .draws=${this.draws}
        ></tightspot-verdict>
        ${
          stage < 1
            ? nothing
            : html`<tightspot-readings
                .editor=${editor}
                .editorState=${editorState}
                .survey=${survey}
                .rows=${rows}
                .doubtful=${doubtfulReadings(assessment, rows.length)}
                .assessment=${assessment}
              ></tightspot-readings>`
        }
        ${
          stage < 2
            ? nothing
            : html`<tightspot-comparison-section
                  .editor=${editor}
                  .inspection=${inspection}
                  .choice=${choice}
                  .found=${found}
                  ?busy=${isBusy}
                ></tightspot-comparison-section>
                <tightspot-basis
                  .slide=${inspection?.slide ?? null}
                  .assessment=${assessment}
                ></tightspot-basis>`
        }
      </div>
      ${
        stage < 2
          ? nothing
          : html`<tightspot-history-section
              .editor=${editor}
              .inspection=${inspection}
              .shown=${survey?.id ?? ""}
            ></tightspot-history-section>`
      }
      <p class="unseen" role="status">${title}</p>
    `;
  }

  #assess(): void {
    const { editorState, survey } = this;
    if (editorState?.inspection == null || survey === null) return;
    const input = JSON.stringify([editorState.inspection.slide, survey]);
    if (input === this.#assessed) return;
    this.#assessed = input;
    this.isBusy = true;
    this.#assessor ??= createAssessor(({ answer, draws }) => {
      this.answer = answer;
      this.draws = draws;
      this.isBusy = false;
    });
    this.#assessor.ask({ inspection: editorState.inspection, survey: survey.id });
  }

  /** Notes the verdict on the survey when the page is left, if it was edited. */
  noteVerdictOnLeaving(): void {
    if (this.survey !== null) this.#noteVerdictOn(this.survey);
  }

  /** Notes the verdict on a survey if the survey or the slide changed since the inspection was opened. */
  #noteVerdictOn({ id }: Survey): void {
    const { editor } = this;
    if (editor === null || editor.inspection === null) return;
    const now = editor.inspection.surveys.find((survey) => survey.id === id);
    const before = editor.opened?.surveys.find((survey) => survey.id === id);
    if (now === undefined) return;
    const isChanged =
      JSON.stringify([editor.inspection.slide, now]) !== JSON.stringify([editor.opened?.slide, before]);
    if (isChanged) this.#noteVerdict();
  }

  /** Notes the verdict shown, unless another is being worked out. */
  #noteVerdict(): void {
    const { editor, answer, isBusy } = this;
    if (editor?.inspection == null || answer?.ok !== true || isBusy) return;
    const given = givenVerdict(answer.value, editor.inspection.slide.units, timeNow());
    if (given !== null) editor.noteVerdict(given);
  }

  async #saveFile(): Promise<void> {
    this.noteVerdictOnLeaving();
    const { editor } = this;
    const editorState = editor?.state;
    if (editorState?.inspection == null) return;
    const missing = await saveFile(editorState.inspection);
    const left =
      editorState.draft.rows.filter((row) => !awaitsReading(row)).length + editorState.draft.fields.length;
    const lacks = [
      ...(left === 0
        ? []
        : [`${left === 1 ? "one entry" : `${left} entries`} that cannot be read yet, marked in red`]),
      ...(missing === 0
        ? []
        : [`${missing === 1 ? "one photograph" : `${missing} photographs`} that this browser no longer has`]),
    ];
    if (lacks.length > 0)
      notify(this, { tone: "wrong", text: `The file holds all but ${lacks.join(" and ")}.` });
    // Changes made while the file was saved are not in it.
    else if (editor?.state === editorState) editor.markInFile();
  }

  #goToReading({ detail }: HTMLElementEventMap["tightspot-go-to-reading"]): void {
    void this.renderRoot.querySelector<ReadingsPanel>("tightspot-readings")?.focusReading(detail);
  }
}

/** The readings that a finding names, except findings that name half of them or more: they concern the whole survey. */
function doubtfulReadings(assessment: Assessment | null, count: number): ReadonlySet<number> {
  const findings = assessment?.checks.filter(
    ({ severity, readings }) => severity !== "note" && readings.length < count / 2,
  );
  return new Set(findings?.flatMap(({ readings }) => readings));
}
