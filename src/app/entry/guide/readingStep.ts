import { html, LitElement, nothing, type PropertyValues, unsafeCSS } from "lit";
import { customElement, property } from "lit/decorators.js";
import type { Assessment } from "../../../analysis/assessment.ts";
import type { EntryWarning } from "../../../analysis/outliers/entryWarnings.ts";
import type { Slide, Survey } from "../../../inspection/schema.ts";
import { awaitsReading, type GuideState } from "../../../records/editorState.ts";
import type { InspectionEditor } from "../../editing/inspectionEditor.ts";
import type { Row } from "../../editing/rows.ts";
import { controls } from "../../ui/sharedStyles.ts";
import type { FigureEntry } from "./figureEntry.ts";
import { bareUnit, stageOf } from "./figureInput.ts";
import "./figureEntry.ts";
import { suggestedStations } from "./suggestedStations.ts";
import "./readingList.ts";
import { type ReadingContext, type ReadingHost, ReadingSession } from "./readingSession.ts";
import readingStepCss from "./readingStep.css?inline";
import { correcting, fieldFor, howTo, offers, slipMark, station } from "./readingViews.ts";

/** Reading, one station at a time: where to go, what to do there, the field, and what was taken. */
@customElement("tightspot-read-step")
export class ReadingStep extends LitElement implements ReadingHost {
  static override styles = [controls, unsafeCSS(readingStepCss)];

  @property({ attribute: false }) editor: InspectionEditor | null = null;
  @property({ attribute: false }) guide: GuideState | null = null;
  @property({ attribute: false }) slide: Slide | null = null;
  @property({ attribute: false }) survey: Survey | null = null;
  @property({ attribute: false }) rows: readonly Row[] = [];
  @property({ attribute: false }) assessment: Assessment | null = null;

  readonly session = new ReadingSession(this);

  #suspicions: ReadonlyMap<number, EntryWarning> = new Map();

  /** The current state: keys may come faster than the page is drawn. */
  get bench(): ReadingContext | null {
    const { editor, guide, slide } = this;
    if (editor === null || guide === null || slide === null || editor.survey === null) return null;
    const rows = editor.rows.filter((row) => !awaitsReading(row));
    return { editor, guide: editor.guide ?? guide, slide, survey: editor.survey, rows };
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has("survey") || changed.has("slide")) this.#suspicions = this.session.suspicions();
  }

  override firstUpdated(): void {
    this.focusField();
  }

  override render() {
    const { bench, session } = this;
    if (bench === null) return nothing;
    const { editor, guide, slide, survey, rows } = bench;
    const { turn, asked, corrected } = session;
    const isTyping = guide.typing.position !== undefined;
    const isAsking = corrected !== null || turn !== null || isTyping;
    const mark = this.#mark();
    const isPlanned = turn !== null && !isTyping && corrected === null;
    return html`
      <div class="about">
        ${corrected === null ? station(turn, bench, session) : this.#correcting(corrected, slide)}
        ${mark ?? (corrected === null ? howTo(bench, asked, stageOf(guide, asked), turn, this.assessment) : nothing)}
      </div>
      ${isAsking ? this.#field(bench) : nothing}
      <div class="buttons">
        ${isPlanned ? html`<button type="button" @click=${() => session.skip()}>Skip this one</button>` : nothing}
${
  isTyping
    ? html`<button type="button" @click=${() => session.backToPlan()}>Back</button>`
    : html`<button type="button" @click=${() => session.otherPosition()}>Another position</button>`
}
      </div>
      ${offers(suggestedStations(this.assessment, slide.units), turn, slide, (place) =>
        place === "end float"
          ? this.dispatchEvent(new CustomEvent("tightspot-end-float"))
          : session.goTo(place),
      )}
      <p class="keys">
        <kbd>Enter</kbd> takes it, <kbd>↑</kbd> goes back to the one before, <kbd>Ctrl</kbd> <kbd>Z</kbd> takes back.
      </p>
      <tightspot-reading-list
        .survey=${survey}
        .rows=${rows}
        .units=${slide.units}
        .suspicions=${this.#suspicions}
        @tightspot-row-correct=${({ detail }: CustomEvent<number>) => session.correct(detail)}
        @tightspot-row-again=${({ detail }: CustomEvent<number>) => session.again(detail)}
        @tightspot-row-strike=${({ detail: { key, why } }: HTMLElementEventMap["tightspot-row-strike"]) => {
          editor.strike(key, why);
          session.settle("Struck.");
        }}
        @tightspot-row-unstrike=${({ detail }: CustomEvent<number>) => {
          editor.unstrike(detail);
          session.settle("Counted again.");
        }}
        @tightspot-row-delete=${({ detail }: CustomEvent<number>) => {
          editor.deleteRow(detail);
          session.settle("Deleted. Undo brings it back.");
        }}
      ></tightspot-reading-list>
      <p class="unseen" role="status">${session.said}</p>
    `;
  }

  focusField(): void {
    void this.updateComplete.then(() =>
      this.renderRoot.querySelector<FigureEntry>("tightspot-figure-entry")?.focus(),
    );
  }

  /** Takes a value from a gauge as if it were typed and entered. */
  takeValue(text: string): void {
    this.session.typed(text);
    this.session.entered();
  }

  undo(): void {
    this.session.undo();
  }

  redo(): void {
    this.session.redo();
  }

  #correcting(row: Row, slide: Slide) {
    const { session } = this;
    return correcting(row, session.indexOf(row.key), session.correction?.column, slide, {
      position: () => session.correct(row.key, "position"),
      done: () => session.endCorrection(),
    });
  }

  /** The mark on the reading taken last, where it looks like a slip; null where it does not. */
  #mark() {
    const { bench, session } = this;
    const row = bench?.rows.find(({ key }) => key === session.last);
    const index = row === undefined ? null : session.indexOf(row.key);
    const suspicion = index === null ? undefined : this.#suspicions.get(index);
    if (row === undefined || index === null || suspicion === undefined || session.correction !== null)
      return null;
    return slipMark(suspicion, index, row, {
      correct: () => session.correct(row.key),
      again: () => session.again(row.key),
      right: () => session.settle("It stands."),
    });
  }

  #field({ guide, slide }: ReadingContext) {
    const { session } = this;
    const { asked, correction, corrected } = session;
    const stage = correction === null ? stageOf(guide, asked) : correction.column;
    const { label, counts, choices } = fieldFor(stage, asked, slide.units);
    const hasChoice = correction === null && choices.length > 0;
    return html`<tightspot-figure-entry
      .label=${label}
      .counts=${counts}
      .choices=${hasChoice ? choices : []}
      .unit=${hasChoice ? bareUnit(guide) : undefined}
      .text=${(correction === null ? guide.typing[stage] : corrected?.cells[correction.column]) ?? ""}
      .problem=${session.problem}
      .doubt=${session.doubt}
      @tightspot-figure-typed=${({ detail }: CustomEvent<string>) => session.typed(detail)}
      @tightspot-figure-entered=${() => session.entered()}
      @tightspot-figure-leave=${({ detail }: HTMLElementEventMap["tightspot-figure-leave"]) => session.leave(detail)}
      @tightspot-figure-unit=${({ detail }: CustomEvent<string>) => session.takeUnit(detail)}
    ></tightspot-figure-entry>`;
  }
}
