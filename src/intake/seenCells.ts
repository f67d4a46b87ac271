import { numberTextOf, unitBeside } from "./cell.ts";
import type { Row } from "./cutting/rows.ts";
import type { LengthUnit } from "./lengthUnit.ts";
import { type DecimalMark, isPlainNumber, type MarkEvidence, marksIn } from "./numberText.ts";

/** What the cells of the columns of figures show together. */
export interface Seen {
  readonly evidence: MarkEvidence;
  /** The units written in the cells of each column, counted from 0. */
  readonly units: ReadonlyMap<number, ReadonlySet<LengthUnit | "divisions">>;
}

/** Collects decimal marks and units from the cells of some columns, row by row. */
export class SeenCells implements Seen {
  readonly units: ReadonlyMap<number, Set<LengthUnit | "divisions">>;
  /** How many marks and units were found so far. */
  found = 0;
  readonly #columns: readonly number[];
  readonly #marks = new Set<DecimalMark>();
  /** A plain number with this mark shows nothing new. */
  #met: MarkEvidence = "both";

  /** @param columns counted from 0 */
  constructor(columns: readonly number[]) {
    this.#columns = columns;
    this.units = new Map(columns.map((column) => [column, new Set()]));
  }

  get evidence(): MarkEvidence {
    const [only = "none"] = this.#marks;
    return this.#marks.size > 1 ? "both" : only;
  }

  add({ cells }: Row): void {
    for (const column of this.#columns) {
      const cell = cells[column] ?? "";
      if (!isPlainNumber(cell, this.#met)) this.#look(cell, column);
    }
  }

  #look(cell: string, column: number): void {
    for (const mark of marksIn([numberTextOf(cell)])) {
      if (this.#marks.has(mark)) continue;
      this.#marks.add(mark);
      this.#met = mark;
      this.found++;
    }
    const unit = unitBeside(cell);
    const units = this.units.get(column);
    if (unit === undefined || units === undefined || units.has(unit)) return;
    units.add(unit);
    this.found++;
  }
}
