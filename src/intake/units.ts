import type { Units } from "../inspection/units.ts";
import { type LengthUnit, plainUnit } from "./lengthUnit.ts";

/** The unit that a column's heading gives, and the units written in its cells. */
export interface UnitsFound {
  readonly heading: LengthUnit | "divisions" | undefined;
  /** Whether the reader said it of this very column. */
  readonly isSaid: boolean;
  readonly cells: ReadonlySet<LengthUnit | "divisions">;
}

/** What a column's bare numbers are in, undefined where nothing tells, and what tells it. */
export interface UnitTold {
  readonly unit: LengthUnit | "divisions" | undefined;
  readonly told: string;
  /** Whether the reader said it of this very column. */
  readonly isSaid?: boolean;
}

export interface SettledUnits {
  /** The unit that every length is brought to; undefined where nothing tells any unit. */
  readonly target: Units | undefined;
  /** The unit of a length that has none beside it and no column to give it one. */
  readonly unlabelled: LengthUnit | undefined;
  /** One for each of the columns given. */
  readonly columns: readonly UnitTold[];
}

/**
 * Settles what unit each column is in and what unit all are brought to.
 *
 * @param columns those that hold lengths, the position first
 * @param elsewhere units written in the log's data lines
 * @param stated what a `slide.units` line says
 * @param asked what the reader said, where the log says nothing
 */
export function settleUnits(
  columns: readonly UnitsFound[],
  elsewhere: readonly LengthUnit[],
  stated: Units | undefined,
  asked: Units | undefined,
): SettledUnits {
  const written = columns.map(({ heading, cells }) => lengthUnits(heading ? [heading] : [...cells]));
  const own = written.map(([only, ...others]) => (others.length === 0 ? only : undefined));
  const bases = new Set([...written.flat(), ...elsewhere].map((unit) => unit.base));
  const [base] = bases;
  const shared = bases.size === 1 ? base : undefined;
  const plain = (units: Units | undefined): LengthUnit | undefined => units && plainUnit(units);
  const unlabelled = plain(stated ?? shared ?? asked);
  return {
    target: stated ?? asked ?? own[0]?.base ?? base,
    unlabelled,
    columns: columns.map(({ heading, isSaid }, column) =>
      written[column]?.length === 0
        ? { unit: unlabelled, told: toldElsewhere(stated, shared, asked) }
        : {
            unit: own[column] ?? plain(stated ?? asked),
            told: toldByColumn(heading !== undefined, isSaid),
            isSaid: isSaid && heading !== undefined,
          },
    ),
  };
}

function toldByColumn(isHeaded: boolean, isSaid: boolean): string {
  if (!isHeaded) return "its cells give the unit";
  return isSaid ? "the unit is as said" : "its heading gives the unit";
}

function toldElsewhere(
  stated: Units | undefined,
  shared: Units | undefined,
  asked: Units | undefined,
): string {
  if (stated) return "the line slide.units gives the unit";
  if (shared) return "the unit is that of the rest of the log";
  return asked ? "the unit is as asked for" : "nothing gives the unit";
}

function lengthUnits(units: readonly (LengthUnit | "divisions")[]): readonly LengthUnit[] {
  return units.filter((unit) => unit !== "divisions");
}
