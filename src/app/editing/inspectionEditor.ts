import type { GivenVerdict, Inspection, SlideEvent, Survey } from "../../inspection/schema.ts";
import type { CsvReadings } from "../../intake/readCsv.ts";
import { type Autosave, createAutosave, type SaveStatus } from "../../records/autosave.ts";
import {
  awaitsReading,
  type EditorState,
  type FieldPlace,
  type GuideState,
  type PendingInput,
  type StoredInspection,
  type UndoStep,
} from "../../records/editorState.ts";
import type { SaveResult } from "../../records/storedInspection.ts";
import { afterChange } from "./afterChange.ts";
import type { ColumnName } from "./columns.ts";
import { enterField, showField } from "./fieldValues.ts";
import { guideOfSurvey, withGuide } from "./guides.ts";
import {
  withoutReadings,
  withReadingsAdded,
  withReadingsReplaced,
  withSurveyAdded,
} from "./importReadings.ts";
import { timeNow } from "./localTime.ts";
import { blankRow, type Row, rowsOf, withReading, withRows, withUnreadableRows } from "./rows.ts";
import { sameEvents, withEvents, withVerdict } from "./slideEvents.ts";
import { nextSurvey, withoutSurvey, withSurvey, withSurveyRestored } from "./surveys.ts";
import { NO_STEPS, reversed, rowsAfterStep, stepBetween, withStep } from "./undo.ts";

/** What becomes of a log's readings: with those of the survey, in their place, or a survey of their own. */
export type ImportMode = "add" | "replace" | "as survey";

/** Takes back what was just done. */
export type Undo = () => void;

/**
 * One inspection being worked on: every change goes through here, is kept, and is told by a `change` event.
 */
export class InspectionEditor extends EventTarget {
  readonly id: string;
  /** The inspection as it was when it was opened here. */
  readonly opened: Inspection | null;
  #state: EditorState;
  #survey: string | null = null;
  #rows: readonly Row[] = [];
  #saveStatus: SaveStatus;
  readonly #autosave: Autosave;
  /** The field or cell being typed in: one key after the other in it is one step. */
  #typingIn = "";

  constructor(
    kept: StoredInspection,
    save: (kept: StoredInspection) => Promise<SaveResult>,
    survey?: string,
  ) {
    super();
    this.id = kept.id;
    const { inspection, draft, inFile = false } = kept;
    this.#state = { ...withUnreadableRows({ inspection, draft }), inFile };
    this.opened = this.#state.inspection;
    this.#saveStatus = { state: "kept", at: kept.savedAt };
    this.#autosave = createAutosave(kept, save, (saveStatus) => {
      this.#saveStatus = saveStatus;
      this.#tell();
    });
    this.chooseSurvey(survey ?? this.#surveys.at(-1)?.id ?? null);
  }

  get state(): EditorState {
    return this.#state;
  }

  get inspection(): Inspection | null {
    return this.#state.inspection;
  }

  /** The survey being worked on. */
  get survey(): Survey | null {
    return this.#surveys.find(({ id }) => id === this.#survey) ?? null;
  }

  get rows(): readonly Row[] {
    return this.#rows;
  }

  get saveStatus(): SaveStatus {
    return this.#saveStatus;
  }

  get hasUnsaved(): boolean {
    return this.#autosave.hasUnsaved;
  }

  get canUndo(): boolean {
    return (this.#state.draft.steps?.done.length ?? 0) > 0;
  }

  get canRedo(): boolean {
    return (this.#state.draft.steps?.undone.length ?? 0) > 0;
  }

  /** How far the entry station by station is; null where it was not begun, or there is no survey. */
  get guide(): GuideState | null {
    return this.#survey === null ? null : guideOfSurvey(this.#state.draft, this.#survey);
  }

  get #surveys(): readonly Survey[] {
    return this.#state.inspection?.surveys ?? [];
  }

  /** Keeps the work as it is: what was opened from a file and is not kept yet. */
  scheduleSave(): void {
    this.#change(this.#state);
  }

  /** Takes note that there is a file of all that was entered. */
  markInFile(): void {
    this.#change({ ...this.#state, inFile: true });
  }

  /** Saves at once what was not saved yet. */
  saveNow(): Promise<void> {
    return this.#autosave.saveNow();
  }

  chooseSurvey(id: string | null): void {
    this.#survey = this.#surveys.some((survey) => survey.id === id) ? id : (this.#surveys.at(-1)?.id ?? null);
    this.#rows = this.survey === null ? [] : rowsOf(this.#state.draft, this.survey);
    this.#tell();
  }

  /** Takes the work as it now is: an imported survey, a slide described. */
  setState(state: EditorState, survey?: string): void {
    this.#change(state);
    this.chooseSurvey(survey ?? this.#survey);
  }

  setPendingInput(draft: PendingInput): void {
    this.#change({ ...this.#state, draft });
  }

  enterField(place: FieldPlace, text: string): void {
    const before = showField(this.#state, place).text;
    this.#enterField(place, text);
    this.#record({ of: "field", ...place, before, after: text }, `${place.survey} ${place.path}`);
  }

  enterCell(key: number, column: ColumnName, text: string): void {
    const typed = (row: Row): Row => ({
      ...row,
      cells: { ...row.cells, [column]: text },
      marks: awaitsReading(row) && column !== "position" ? { time: timeNow() } : row.marks,
    });
    this.#changeRow(key, typed, `${key} ${column}`);
  }

  /** Begins a reading with the first thing that is typed of it. */
  beginRow(row: Row, column: ColumnName, text: string): void {
    const begun = { ...row, cells: { [column]: text }, marks: { time: timeNow() } };
    this.setRows([...this.#rows, begun], `${row.key} ${column}`);
  }

  /** Takes a reading that was entered in one piece; it is the answer to a row that waits for one at its place. */
  addReading(cells: Row["cells"]): Row {
    const row: Row = { ...blankRow(), cells, marks: { time: timeNow() } };
    this.setRows(withReading(this.#rows, row));
    return row;
  }

  /** Strikes a reading: it stays, with the reason, and does not count. */
  strike(key: number, why: string): void {
    this.#changeRow(key, (row) => ({ ...row, marks: { ...row.marks, excluded: why } }));
  }

  unstrike(key: number): void {
    this.#changeRow(key, ({ marks: { excluded: _struck, ...marks }, ...row }) => ({ ...row, marks }));
  }

  deleteRow(key: number): Undo {
    const at = this.#rows.findIndex((row) => row.key === key);
    const deleted = this.#rows.filter((row) => row.key === key);
    const survey = this.#survey;
    this.setRows(this.#rows.filter((row) => row.key !== key));
    return () => {
      if (survey !== this.#survey) this.chooseSurvey(survey);
      this.setRows(this.#rows.toSpliced(at, 0, ...deleted));
    };
  }

  /** @param typingIn the cell that is being typed in, if any */
  setRows(rows: readonly Row[], typingIn = ""): void {
    const before = this.#rows;
    this.#putRows(rows);
    if (this.#survey !== null) this.#record(stepBetween(this.#survey, before, rows), typingIn);
  }

  /** Goes on with the entry station by station, or lays it by. */
  setGuide(guide: GuideState): void {
    const before = guideOfSurvey(this.#state.draft, guide.survey)?.stations ?? guide.stations;
    this.#change({ ...this.#state, draft: withGuide(this.#state.draft, guide) });
    if (before.join() === guide.stations.join()) return;
    const typingIn = guide.typing.stations === undefined ? "" : `${guide.survey} stations`;
    this.#record({ of: "stations", survey: guide.survey, before, after: guide.stations }, typingIn);
  }

  /** Takes the last step back. Nothing is lost by that: it can be done again. */
  undo(): UndoStep | null {
    const { done, undone } = this.#state.draft.steps ?? NO_STEPS;
    const step = done.at(-1);
    if (step === undefined) return null;
    const isDone = this.#apply(reversed(step));
    this.#keepSteps({ done: isDone ? done.slice(0, -1) : [], undone: isDone ? [...undone, step] : [] });
    return isDone ? step : null;
  }

  /** Does again what was taken back last. */
  redo(): UndoStep | null {
    const { done, undone } = this.#state.draft.steps ?? NO_STEPS;
    const step = undone.at(-1);
    if (step === undefined) return null;
    const isDone = this.#apply(step);
    this.#keepSteps({ done: isDone ? [...done, step] : done, undone: isDone ? undone.slice(0, -1) : [] });
    return isDone ? step : null;
  }

  addSurvey(): void {
    const survey = nextSurvey(this.#surveys);
    this.setState(withSurvey(this.#state, survey), survey.id);
  }

  /** Takes a log's readings in. */
  importReadings(csv: CsvReadings, how: ImportMode): Undo {
    const { survey } = this;
    if (how === "as survey" || survey === null) {
      const added = withSurveyAdded(this.#state, csv);
      this.setState(added.state, added.survey);
      return () => this.setState(withoutSurvey(this.#state, added.survey));
    }
    const before = this.#rows;
    const replaced = how === "replace" ? before : [];
    this.setState((how === "add" ? withReadingsAdded : withReadingsReplaced)(this.#state, survey, csv));
    this.#record(stepBetween(survey.id, before, this.#rows));
    return () => {
      this.chooseSurvey(survey.id);
      this.setRows([...replaced, ...withoutReadings(this.#rows, csv.readings)]);
    };
  }

  /**
   * Takes the slide's events as they now are.
   *
   * @param typingIn the field that is being typed in, if any
   */
  setEvents(events: readonly SlideEvent[], typingIn = ""): void {
    const before = this.inspection?.events ?? [];
    this.#change(withEvents(this.#state, events));
    this.#record({ of: "events", survey: null, before, after: events }, typingIn);
  }

  /** Notes a verdict that was given, unless it is the last one noted of its survey. */
  noteVerdict(given: GivenVerdict): void {
    const noted = withVerdict(this.#state, given);
    if (noted !== this.#state) this.#change(noted);
  }

  deleteSurvey(id: string): Undo {
    const before = this.#state;
    this.setState(withoutSurvey(this.#state, id));
    return () => this.setState(withSurveyRestored(this.#state, before, id), id);
  }

  #changeRow(key: number, change: (row: Row) => Row, typingIn = ""): void {
    this.setRows(
      this.#rows.map((row) => (row.key === key ? change(row) : row)),
      typingIn,
    );
  }

  #putRows(rows: readonly Row[]): void {
    this.#rows = rows;
    if (this.#survey !== null) this.#change(withRows(this.#state, this.#survey, rows));
  }

  #enterField(place: FieldPlace, text: string): void {
    const entered = enterField(this.#state, place, text);
    // What a survey's data say may make rows readable, or other columns needed.
    this.#change(place.survey === null ? entered : withRows(entered, place.survey, this.#rows));
  }

  #record(step: UndoStep | null, typingIn = ""): void {
    if (step === null || this.#state.inspection === null) return;
    const goesOn = typingIn !== "" && typingIn === this.#typingIn;
    this.#typingIn = typingIn;
    const { steps = NO_STEPS } = this.#state.draft;
    this.#change({ ...this.#state, draft: { ...this.#state.draft, steps: withStep(steps, step, goesOn) } });
  }

  #keepSteps(steps: PendingInput["steps"] & object): void {
    this.#typingIn = "";
    this.#change({ ...this.#state, draft: { ...this.#state.draft, steps } });
  }

  /** Whether it could be done. */
  #apply(step: UndoStep): boolean {
    if (step.of === "field") {
      this.#enterField(step, step.after);
      return true;
    }
    if (step.of === "events") {
      const isAsBefore = sameEvents(this.inspection?.events ?? [], step.before);
      if (isAsBefore) this.#change(withEvents(this.#state, step.after));
      return isAsBefore;
    }
    if (step.survey !== this.#survey) this.chooseSurvey(step.survey);
    const { survey, inspection, guide } = this;
    if (survey?.id !== step.survey || inspection === null) return false;
    if (step.of === "rows") {
      const rows = rowsAfterStep(this.#rows, step, survey, inspection.slide.units);
      if (rows !== null) this.#putRows(rows);
      return rows !== null;
    }
    if (guide === null) return false;
    this.#change({ ...this.#state, draft: withGuide(this.#state.draft, { ...guide, stations: step.after }) });
    return true;
  }

  #change(state: EditorState): void {
    this.#state = afterChange(this.#state, state);
    this.#autosave.schedule(this.#state);
    this.#tell();
  }

  #tell(): void {
    this.dispatchEvent(new Event("change"));
  }
}
