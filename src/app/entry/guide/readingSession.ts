import type { ReactiveControllerHost } from "lit";
import { type EntryWarning, entryWarnings } from "../../../analysis/outliers/entryWarnings.ts";
import { slideInMillimetres, surveyInMillimetres } from "../../../inspection/metric.ts";
import type { Reading, Slide, Survey } from "../../../inspection/schema.ts";
import type { GuideState } from "../../../records/editorState.ts";
import type { InspectionEditor } from "../../editing/inspectionEditor.ts";
import { type Row, readRow, rowReader } from "../../editing/rows.ts";
import { type Asked, askedOf } from "./askedFigures.ts";
import { type Correction, correctionOf, figureAfter, rowBeside } from "./correction.ts";
import { asCell, bareUnit, enter, figureBefore, stageOf } from "./figureInput.ts";
import { nextTurn, type Turn, withoutNextTurn } from "./nextStation.ts";
import { placeOf, undoStepWords } from "./undoStepWords.ts";

/** How long typing has to rest before what is typed is doubted. */
const REST = 500;
const TAKEN_AGAIN = "Taken again";

/** Everything that reading at stations goes on with. */
export interface ReadingContext {
  readonly editor: InspectionEditor;
  readonly guide: GuideState;
  readonly slide: Slide;
  readonly survey: Survey;
  readonly rows: readonly Row[];
}

export interface ReadingHost extends ReactiveControllerHost {
  readonly bench: ReadingContext | null;
  /** Puts the cursor into the field, with what is in it selected. */
  focusField(): void;
}

/** What goes on while readings are entered: what is typed, taken, doubted, corrected, taken back. */
export class ReadingSession {
  correction: Correction | null = null;
  /** The reading taken last: its mark is shown until something else is done. */
  last: number | null = null;
  /** Why what was entered is not taken. */
  problem = "";
  /** Why what is typed looks like a slip. */
  doubt = "";
  /** What a screen reader is told. */
  said = "";

  #resting: ReturnType<typeof setTimeout> | undefined;

  constructor(private readonly host: ReadingHost) {
    host.addController({ hostDisconnected: () => clearTimeout(this.#resting) });
  }

  get asked(): readonly Asked[] {
    const { bench } = this.host;
    return bench === null ? [] : (askedOf(bench.survey, bench.slide.units) ?? []);
  }

  get turn(): Turn | null {
    const { bench } = this.host;
    return bench === null ? null : nextTurn(bench.guide, bench.survey.readings, bench.slide.units);
  }

  /** The row that is being corrected; null also where it was taken back meanwhile. */
  get corrected(): Row | null {
    return this.correction === null ? null : this.#rowOf(this.correction.key);
  }

  /** The marks on the readings, with those on further ones. */
  suspicions(...further: readonly Reading[]): ReadonlyMap<number, EntryWarning> {
    const { bench } = this.host;
    if (bench === null) return new Map();
    const { slide, survey } = bench;
    const whole = { ...survey, readings: [...survey.readings, ...further] };
    return entryWarnings(slideInMillimetres(slide), surveyInMillimetres(whole, slide.units), slide.units);
  }

  /** The place of a row among the readings, 0-based; null where it cannot be read. */
  indexOf(key: number): number | null {
    const { bench } = this.host;
    if (bench === null) return null;
    const readOf = rowReader(bench.survey, bench.slide.units);
    const read = bench.rows.filter((row) => readOf(row).state === "read");
    const at = read.findIndex((row) => row.key === key);
    return at === -1 ? null : at;
  }

  typed(text: string): void {
    const { bench } = this.host;
    if (bench === null) return;
    const { editor, guide } = bench;
    this.problem = "";
    this.doubt = "";
    clearTimeout(this.#resting);
    if (this.correction !== null) {
      editor.enterCell(this.correction.key, this.correction.column, text);
      return;
    }
    editor.setGuide({ ...guide, typing: { ...guide.typing, [stageOf(guide, this.asked)]: text } });
    this.#resting = setTimeout(() => this.#doubtWhatIsTyped(bench.survey), REST);
  }

  entered(): void {
    const { bench } = this.host;
    if (bench === null) return;
    clearTimeout(this.#resting);
    if (this.correction !== null) {
      this.#enteredCorrection(bench, this.correction);
      return;
    }
    const { editor, guide, slide } = bench;
    const entered = enter(editor, guide, this.turn, this.asked, slide.units);
    if (!entered.ok) {
      this.#refuse(`It ${entered.problem.what}. ${entered.problem.cure}`);
      return;
    }
    this.settle("");
    if (entered.value.to === "reading") {
      this.last = entered.value.row.key;
      this.said = takenWords(editor, slide, entered.value.position);
    } else {
      const { asked, turn } = this;
      const next = asked.find(({ column }) => column === stageOf(editor.guide ?? guide, asked));
      this.said = `${next?.label ?? ""}, at ${turn?.position ?? ""} ${slide.units}`;
    }
  }

  leave(where: "before" | "after" | "cancel"): void {
    const { bench } = this.host;
    if (bench === null) return;
    const { editor, guide, rows } = bench;
    const { correction } = this;
    if (where === "cancel") {
      if (guide.typing.position !== undefined) this.backToPlan();
      else if (correction === null) this.typed("");
      else editor.enterCell(correction.key, correction.column, correction.original);
      this.endCorrection();
      return;
    }
    const earlier = correction === null && where === "before" ? figureBefore(guide, this.asked) : null;
    const row = rowBeside(rows, correction, where);
    if (earlier !== null) {
      editor.setGuide(earlier);
      this.host.focusField();
    } else if (row !== null) this.correct(row.key);
    else if (where === "after") this.endCorrection();
  }

  correct(key: number, column?: "position"): void {
    const row = this.#rowOf(key);
    if (row === null) return;
    this.settle("");
    this.correction = correctionOf(row, this.asked, column);
  }

  endCorrection(): void {
    const { last } = this;
    this.settle("");
    this.last = last;
  }

  /** The old reading is struck, and stays; its station is the next to be read. */
  again(key: number): void {
    const position = Number(this.#rowOf(key)?.cells.position);
    this.host.bench?.editor.strike(key, TAKEN_AGAIN);
    if (!Number.isNaN(position)) this.goTo(position);
    this.settle("Struck. Take it again.");
  }

  goTo(position: number): void {
    this.#become(({ typing: { position: _typed, ...typing }, ...guide }) => ({
      ...guide,
      typing,
      chosen: position,
    }));
    this.settle("");
  }

  otherPosition(): void {
    this.#become((guide) => ({ ...guide, typing: { ...guide.typing, position: "" } }));
    this.settle("");
  }

  /** From typing another position, or from one that was chosen, to the station whose turn it is. */
  backToPlan(): void {
    this.#become(({ typing: { position: _typed, ...typing }, chosen: _chosen, ...guide }) => ({
      ...guide,
      typing,
    }));
    this.settle("");
  }

  skip(): void {
    const { bench } = this.host;
    if (bench === null) return;
    const { guide, survey, slide } = bench;
    const { chosen, ...rest } = guide;
    const stations =
      chosen === undefined ? withoutNextTurn(guide, survey.readings, slide.units) : guide.stations;
    this.#become(() => ({ ...rest, stations }));
    this.settle("Skipped.");
  }

  takeUnit(name: string): void {
    const own = this.host.bench?.slide.units;
    this.#become(({ unit: _before, ...guide }) => (name === own ? guide : { ...guide, unit: name }));
    this.host.focusField();
  }

  undo(): void {
    const { bench } = this.host;
    const step = bench?.editor.undo() ?? null;
    if (bench === null || step === null) return;
    this.settle(`Taken back: ${undoStepWords(step)}.`);
    // The station that was read then is the next one again, wherever it stands in the plan.
    const isTaken = step.of === "rows" && step.before.length === 0 && step.after.length === 1;
    const position = isTaken ? Number(placeOf(step)) : Number.NaN;
    const { guide, survey } = bench.editor;
    if (guide === null || survey === null || Number.isNaN(position)) return;
    const turn = nextTurn(guide, survey.readings, bench.slide.units);
    if (turn?.position !== position) bench.editor.setGuide({ ...guide, chosen: position });
  }

  redo(): void {
    const step = this.host.bench?.editor.redo() ?? null;
    if (step !== null) this.settle(`Done again: ${undoStepWords(step)}.`);
  }

  /** What was said, marked and corrected is over with; the field is ready. */
  settle(said: string): void {
    this.correction = null;
    this.problem = "";
    this.doubt = "";
    this.last = null;
    this.said = said;
    this.host.requestUpdate();
    this.host.focusField();
  }

  #rowOf(key: number): Row | null {
    return this.host.bench?.rows.find((row) => row.key === key) ?? null;
  }

  #become(change: (guide: GuideState) => GuideState): void {
    const { bench } = this.host;
    if (bench !== null) bench.editor.setGuide(change(bench.guide));
  }

  #refuse(why: string): void {
    this.problem = why;
    this.said = why;
    this.host.requestUpdate();
    this.host.focusField();
  }

  #enteredCorrection({ survey, slide }: ReadingContext, correction: Correction): void {
    const row = this.#rowOf(correction.key);
    if (row === null) return;
    const read = readRow(row, survey, slide.units);
    const wrong =
      read.state === "unread" ? read.problems.find(({ column }) => column === correction.column) : undefined;
    if (wrong !== undefined || read.state === "blank") {
      this.#refuse(wrong?.what ?? "Type a figure, or delete the reading below.");
      return;
    }
    const next = figureAfter(correction, row, this.asked);
    this.settle(next === null ? "Corrected." : "");
    this.correction = next;
    this.last = next === null ? row.key : null;
  }

  /** Marks what is typed where it would look like a slip, before it is entered. */
  #doubtWhatIsTyped(survey: Survey): void {
    const { bench } = this.host;
    const { turn, asked } = this;
    if (bench === null || turn === null || bench.survey !== survey) return;
    const { guide } = bench;
    if (stageOf(guide, asked) !== asked.at(-1)?.column) return;
    const figures = asked.flatMap(({ column, counts }) => {
      const cell = asCell(guide.typing[column] ?? "", counts, bareUnit(guide));
      return cell.ok ? [[column, Number(cell.value)] as const] : [];
    });
    if (figures.length < asked.length) return;
    const reading = { position: turn.position, ...Object.fromEntries(figures) } as Reading;
    this.doubt = this.suspicions(reading).get(survey.readings.length)?.message ?? "";
    this.host.requestUpdate();
  }
}

function takenWords({ guide, survey }: InspectionEditor, { units }: Slide, position: number): string {
  const next = guide === null || survey === null ? null : nextTurn(guide, survey.readings, units);
  const then = next === null ? "All that was planned is read." : `Next: ${next.position} ${units}.`;
  return `Taken at ${position} ${units}. ${then}`;
}
