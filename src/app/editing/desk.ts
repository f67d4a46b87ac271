import type { Inspection, Survey } from "../../inspection/schema.ts";
import type { CsvReadings } from "../../intake/readCsv.ts";
import { type Keeper, type Keeping, keeperOf } from "../../records/keeper.ts";
import type { Saving } from "../../records/kept.ts";
import type { Draft, KeptInspection, Place, Work } from "../../records/record.ts";
import type { ColumnName } from "./columns.ts";
import { enterField } from "./fields.ts";
import { type Row, rowsOf, withRows, withUnreadable } from "./rows.ts";
import { nextSurvey, withoutSurvey, withSurvey, withSurveyAgain } from "./surveys.ts";
import { withoutReadings, withReadingsAdded, withReadingsReplaced, withSurveyAdded } from "./taking.ts";

/** What becomes of a log's readings: with those of the survey, in their place, or a survey of their own. */
export type HowToTake = "add" | "replace" | "as survey";

/** Takes back what was just done. */
export type Undo = () => void;

/**
 * One inspection being worked on: every change goes through here, is kept, and is told by a `change` event.
 */
export class Desk extends EventTarget {
  readonly id: string;
  #work: Work;
  #survey: string | null = null;
  #rows: readonly Row[] = [];
  #keeping: Keeping;
  readonly #keeper: Keeper;

  constructor(kept: KeptInspection, save: (kept: KeptInspection) => Promise<Saving>, survey?: string) {
    super();
    this.id = kept.id;
    this.#work = withUnreadable({ inspection: kept.inspection, draft: kept.draft });
    this.#keeping = { state: "kept", at: kept.savedAt };
    this.#keeper = keeperOf(kept, save, (keeping) => {
      this.#keeping = keeping;
      this.#tell();
    });
    this.chooseSurvey(survey ?? this.#surveys.at(-1)?.id ?? null);
  }

  get work(): Work {
    return this.#work;
  }

  get inspection(): Inspection | null {
    return this.#work.inspection;
  }

  /** The survey being worked on. */
  get survey(): Survey | null {
    return this.#surveys.find(({ id }) => id === this.#survey) ?? null;
  }

  get rows(): readonly Row[] {
    return this.#rows;
  }

  get keeping(): Keeping {
    return this.#keeping;
  }

  get hasUnsaved(): boolean {
    return this.#keeper.hasUnsaved;
  }

  get #surveys(): readonly Survey[] {
    return this.#work.inspection?.surveys ?? [];
  }

  /** Keeps the work as it is: what was opened from a file and is not kept yet. */
  keep(): void {
    this.#change(this.#work);
  }

  /** Saves at once what was not saved yet. */
  keepNow(): Promise<void> {
    return this.#keeper.flush();
  }

  chooseSurvey(id: string | null): void {
    this.#survey = this.#surveys.some((survey) => survey.id === id) ? id : (this.#surveys.at(-1)?.id ?? null);
    this.#rows = this.survey === null ? [] : rowsOf(this.#work.draft, this.survey);
    this.#tell();
  }

  /** Takes the work as it now is: an imported survey, a slide described. */
  become(work: Work, survey?: string): void {
    this.#change(work);
    this.chooseSurvey(survey ?? this.#survey);
  }

  draftAs(draft: Draft): void {
    this.#change({ ...this.#work, draft });
  }

  enterField(place: Place, text: string): void {
    const entered = enterField(this.#work, place, text);
    // What a survey's data say may make rows readable, or other columns needed.
    this.#change(place.survey === null ? entered : withRows(entered, place.survey, this.#rows));
  }

  enterCell(key: number, column: ColumnName, text: string): void {
    this.#changeRow(key, (row) => ({ ...row, cells: { ...row.cells, [column]: text } }));
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

  setRows(rows: readonly Row[]): void {
    this.#rows = rows;
    if (this.#survey !== null) this.#change(withRows(this.#work, this.#survey, rows));
  }

  addSurvey(): void {
    const survey = nextSurvey(this.#surveys);
    this.become(withSurvey(this.#work, survey), survey.id);
  }

  /** Takes a log's readings in. */
  take(csv: CsvReadings, how: HowToTake): Undo {
    const { survey } = this;
    if (how === "as survey" || survey === null) {
      const added = withSurveyAdded(this.#work, csv);
      this.become(added.work, added.survey);
      return () => this.become(withoutSurvey(this.#work, added.survey));
    }
    const replaced = how === "replace" ? this.#rows : [];
    this.become((how === "add" ? withReadingsAdded : withReadingsReplaced)(this.#work, survey, csv));
    return () => {
      this.chooseSurvey(survey.id);
      this.setRows([...replaced, ...withoutReadings(this.#rows, csv.readings)]);
    };
  }

  deleteSurvey(id: string): Undo {
    const before = this.#work;
    this.become(withoutSurvey(this.#work, id));
    return () => this.become(withSurveyAgain(this.#work, before, id), id);
  }

  #changeRow(key: number, change: (row: Row) => Row): void {
    this.setRows(this.#rows.map((row) => (row.key === key ? change(row) : row)));
  }

  #change(work: Work): void {
    this.#work = work;
    this.#keeper.changed(work);
    this.#tell();
  }

  #tell(): void {
    this.dispatchEvent(new Event("change"));
  }
}
