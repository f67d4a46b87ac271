import { roundTo } from "../inspection/units.ts";

/** Finer than anything is read: what lies beyond it is a trace of binary fractions. */
const MOST_DECIMALS = 6;

/** Numbers as they were stated, each with as many decimals as the longest, so that they stand in a column. */
export function columnFigures(values: readonly number[]): readonly string[] {
  const decimals = values.map((value) => {
    const figure = String(roundTo(value, MOST_DECIMALS));
    return figure.includes("e") ? MOST_DECIMALS : (figure.split(".")[1] ?? "").length;
  });
  return values.map((value) => value.toFixed(Math.max(0, ...decimals)));
}
