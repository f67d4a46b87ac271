import type { Reading } from "../inspection/schema.ts";
import type { Row } from "./cutting/rows.ts";
import type { Direction } from "./direction.ts";
import { type Marks, withMarks } from "./marks.ts";
import { type Refusal, refusal } from "./refusal.ts";

/** Half of a pair, in a row of its own. */
export interface Half {
  readonly row: Row;
  /** The column that it was read in: repeats in columns pair up by themselves. */
  readonly column: number;
  readonly position: number;
  readonly direction: Direction;
  readonly value: number;
  readonly marks: Marks;
}

/** Pairs up halves: at each position the first advancing with the first retracting, and so on. */
export interface HalfPairer {
  /** The pair that the half completes; nothing where it waits for its other half. */
  readonly take: (half: Half) => Reading | undefined;
  /** Refusals for the halves whose others never came. */
  readonly left: () => readonly Refusal[];
}

export function halfPairer(): HalfPairer {
  const waiting = new Map<string, Half[]>();
  const queueFor = ({ column, position }: Half, direction: Direction): Half[] => {
    const key = `${column} ${position} ${direction}`;
    const queue = waiting.get(key) ?? [];
    waiting.set(key, queue);
    return queue;
  };
  return {
    take: (half) => {
      const other = queueFor(half, half.direction === "advancing" ? "retracting" : "advancing").shift();
      if (other !== undefined) return pairOf(other, half);
      queueFor(half, half.direction).push(half);
      return undefined;
    },
    left: () =>
      [...waiting.values()]
        .flat()
        .sort((a, b) => a.row.line - b.row.line)
        .map(({ row, direction }) =>
          refusal(row, {
            fault: `it is the ${direction} half of a pair whose other half is missing`,
            cure: "Write both readings of the pair, each with its direction, or take the row out.",
          }),
        ),
  };
}

function pairOf(first: Half, second: Half): Reading {
  const [advancing, retracting] = first.direction === "advancing" ? [first, second] : [second, first];
  const pair = { position: first.position, advancing: advancing.value, retracting: retracting.value };
  return withMarks(pair, bothMarks(first.marks, second.marks));
}

function bothMarks(first: Marks, second: Marks): Marks {
  const joined = (a: string | undefined, b: string | undefined): string | undefined =>
    a === undefined || b === undefined || a === b ? (a ?? b) : `${a}; ${b}`;
  return {
    time: first.time ?? second.time,
    note: joined(first.note, second.note),
    excluded: joined(first.excluded, second.excluded),
    others:
      first.others && second.others ? { ...first.others, ...second.others } : (first.others ?? second.others),
  };
}
