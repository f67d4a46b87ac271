import type { GivenVerdict, Inspection, SlideEvent, Survey } from "../../inspection/schema.ts";
import type { CsvReadings } from "../../intake/readCsv.ts";
import { type Autosave, createAutosave, type SaveStatus } from "../../records/autosave.ts";
import {
  afterChange,
  awaitsReading,
  type EditorState,
  type FieldPlace,
  type GuideState,
  guideOf,
  type PendingInput,
  type StoredInspection,
  type UndoStep,
  type UndoSteps,
  withGuide,
} from "../../records/editorState.ts";
import type { SaveResult } from "../../records/storedInspection.ts";
import type { ColumnName } from "./columns.ts";
import { showField } from "./fieldValues.ts";
import {
  withoutReadings,
  withReadingsAdded,
  withReadingsReplaced,
  withSurveyAdded,
} from "./importReadings.ts";
import { timeNow } from "./localTime.ts";
import { blankRow, type Row, rowsOf, withReading, withRows, withUnreadableRows } from "./rows.ts";
import { withEvents, withVerdict } from "./slideEvents.ts";
import { nextSurvey, withoutSurvey, withSurvey, withSurveyRestored } from "./surveys.ts";
import { applyStep, NO_STEPS, reversed, stepBetween, withStep } from "./undo.ts";

/** Where the readings of a log go: to those of the survey, in their place, or into a new survey. */
export type ImportMode = "add" | "replace" | "new survey";

/** Undoes one change. */
export type Undo = () => void;

/** Edits one inspection: every change goes through here, is saved, and is reported by a `change` event. */
export class InspectionEditor extends EventTarget {
  readonly id: string;
  /** The inspection as it was opened. */
  readonly opened: Inspection | null;
  #state: EditorState;
  #survey: string | null = null;
  #rows: readonly Row[] = [];
  #saveStatus: SaveStatus;
  readonly #autosave: Autosave;
  /** The field or cell being typed in: consecutive keys in it are one undo step. */
  #typingIn = "";

  /**
   * @param stored the inspection to edit
   * @param save writes an inspection to the database
   * @param survey the id of the survey to show; the last one if left out
   */
  constructor(
    stored: StoredInspection,
    save: (inspection: StoredInspection) => Promise<SaveResult>,
    survey?: string,
  ) {
    super();
    this.id = stored.id;
    const { inspection, draft, inFile = false } = stored;
    this.#state = { ...withUnreadableRows({ inspection, draft }), inFile };
    this.opened = this.#state.inspection;
    this.#saveStatus = { state: "saved", at: stored.savedAt };
    this.#autosave = createAutosave(stored, save, (saveStatus) => {
      this.#saveStatus = saveStatus;
      this.#notify();
    });
    this.chooseSurvey(survey ?? null);
  }

  get state(): EditorState {
    return this.#state;
  }

  get inspection(): Inspection | null {
    return this.#state.inspection;
  }

  /** The survey being edited. */
  get survey(): Survey | null {
    return this.#surveys.find(({ id }) => id === this.#survey) ?? null;
  }

  /** The rows of that survey's table. */
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
    return this.#steps.done.length > 0;
  }

  get canRedo(): boolean {
    return this.#steps.undone.length > 0;
  }

  /** The guide of the survey; null if it was never opened, or there is no survey. */
  get guide(): GuideState | null {
    return this.#survey === null ? null : guideOf(this.#state.draft, this.#survey);
  }

  get #surveys(): readonly Survey[] {
    return this.#state.inspection?.surveys ?? [];
  }

  get #steps(): UndoSteps {
    return this.#state.draft.steps ?? NO_STEPS;
  }

  /** Saves the state although nothing changed: it was opened from a file and is not stored yet. */
  scheduleSave(): void {
    this.#change(this.#state);
  }

  /** Notes that a file holds all that was entered. */
  markInFile(): void {
    this.#change({ ...this.#state, inFile: true });
  }

  /** Saves unsaved changes at once. */
  saveNow(): Promise<void> {
    return this.#autosave.saveNow();
  }

  /** Shows the survey with this id; the last one if there is none. */
  chooseSurvey(id: string | null): void {
    this.#survey = this.#surveys.some((survey) => survey.id === id) ? id : (this.#surveys.at(-1)?.id ?? null);
    this.#rows = this.survey === null ? [] : rowsOf(this.#state.draft, this.survey);
    this.#notify();
  }

  /** Replaces the whole state, as after describing the slide, and shows a survey. */
  setState(state: EditorState, survey?: string): void {
    this.#change(state);
    this.chooseSurvey(survey ?? this.#survey);
  }

  setPendingInput(draft: PendingInput): void {
    this.#change({ ...this.#state, draft });
  }

  enterField(place: FieldPlace, text: string): void {
    const { survey, path } = place;
    const before = showField(this.#state, place).text;
    const step: UndoStep = { of: "field", survey, path, before, after: text };
    this.#apply(step);
    this.#record(step, `${survey} ${path}`);
  }

  enterCell(key: number, column: ColumnName, text: string): void {
    const typed = (row: Row): Row => ({
      ...row,
      cells: { ...row.cells, [column]: text },
      marks: awaitsReading(row) && column !== "position" ? { time: timeNow() } : row.marks,
    });
    this.#changeRow(key, typed, `${key} ${column}`);
  }

  /** Adds a row with the first text typed into it. */
  beginRow(row: Row, column: ColumnName, text: string): void {
    const begun = { ...row, cells: { [column]: text }, marks: { time: timeNow() } };
    this.setRows([...this.#rows, begun], `${row.key} ${column}`);
  }

  /** Adds a complete reading, in place of a row that awaits a reading at its position. */
  addReading(cells: Row["cells"]): Row {
    const row: Row = { ...blankRow(), cells, marks: { time: timeNow() } };
    this.setRows(withReading(this.#rows, row));
    return row;
  }

  /** Excludes a reading from the assessment and keeps it in the table with the reason. */
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

  /** @param typingIn the cell being typed in, if any */
  setRows(rows: readonly Row[], typingIn = ""): void {
    const before = this.#rows;
    this.#putRows(rows);
    if (this.#survey !== null) this.#record(stepBetween(this.#survey, before, rows), typingIn);
  }

  setGuide(guide: GuideState): void {
    const before = guideOf(this.#state.draft, guide.survey)?.stations ?? guide.stations;
    this.setPendingInput(withGuide(this.#state.draft, guide));
    if (before.join() === guide.stations.join()) return;
    const typingIn = guide.typing.stations === undefined ? "" : `${guide.survey} stations`;
    this.#record({ of: "stations", survey: guide.survey, before, after: guide.stations }, typingIn);
  }

  /** Undoes the last step; returns it, or null if there is none or it no longer fits. */
  undo(): UndoStep | null {
    const { done, undone } = this.#steps;
    const step = done.at(-1);
    if (step === undefined) return null;
    const isApplied = this.#apply(reversed(step));
    this.#setSteps({ done: isApplied ? done.slice(0, -1) : [], undone: isApplied ? [...undone, step] : [] });
    return isApplied ? step : null;
  }

  /** Does the step undone last again; returns it, or null if there is none or it no longer fits. */
  redo(): UndoStep | null {
    const { done, undone } = this.#steps;
    const step = undone.at(-1);
    if (step === undefined) return null;
    const isApplied = this.#apply(step);
    this.#setSteps({
      done: isApplied ? [...done, step] : done,
      undone: isApplied ? undone.slice(0, -1) : [],
    });
    return isApplied ? step : null;
  }

  addSurvey(): void {
    const survey = nextSurvey(this.#surveys);
    this.setState(withSurvey(this.#state, survey), survey.id);
  }

  importReadings(csv: CsvReadings, mode: ImportMode): Undo {
    const { survey } = this;
    if (mode === "new survey" || survey === null) {
      const added = withSurveyAdded(this.#state, csv);
      this.setState(added.state, added.survey);
      return () => this.setState(withoutSurvey(this.#state, added.survey));
    }
    const before = this.#rows;
    const replaced = mode === "replace" ? before : [];
    this.setState((mode === "add" ? withReadingsAdded : withReadingsReplaced)(this.#state, survey, csv));
    this.#record(stepBetween(survey.id, before, this.#rows));
    return () => {
      this.chooseSurvey(survey.id);
      this.setRows([...replaced, ...withoutReadings(this.#rows, csv.readings)]);
    };
  }

  /** @param typingIn the field being typed in, if any */
  setEvents(events: readonly SlideEvent[], typingIn = ""): void {
    const before = this.inspection?.events ?? [];
    this.#change(withEvents(this.#state, events));
    this.#record({ of: "events", survey: null, before, after: events }, typingIn);
  }

  /** Adds a verdict to the slide's history, unless the survey's last one says the same. */
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

  #record(step: UndoStep | null, typingIn = ""): void {
    if (step === null || this.#state.inspection === null) return;
    const goesOn = typingIn !== "" && typingIn === this.#typingIn;
    this.#setSteps(withStep(this.#steps, step, goesOn), typingIn);
  }

  #setSteps(steps: UndoSteps, typingIn = ""): void {
    this.#typingIn = typingIn;
    this.setPendingInput({ ...this.#state.draft, steps });
  }

  /** Applies a step to the survey that it belongs to, and shows that survey. Returns whether it fits. */
  #apply(step: UndoStep): boolean {
    if (step.survey !== null && step.survey !== this.#survey) this.chooseSurvey(step.survey);
    const applied = applyStep(this.#state, this.#rows, step);
    if (applied === null) return false;
    this.#rows = applied.rows;
    this.#change(applied.state);
    return true;
  }

  #change(state: EditorState): void {
    this.#state = afterChange(this.#state, state);
    this.#autosave.schedule(this.#state);
    this.#notify();
  }

  #notify(): void {
    this.dispatchEvent(new Event("change"));
  }
}
