import type { Reading } from "../../inspection/schema.ts";
import { isPair, isPositioning } from "../../inspection/schema.ts";
import type { Check } from "./check.ts";

/** Rows fewer than this could repeat one another by chance. */
const SHORTEST_BLOCK = 5;

/** The same rows twice, as when a block is pasted a second time: they would count as repeats that they are not. */
export const duplicateRows: Check = ({ survey }) => {
  const keys = survey.readings.map(keyOf);
  const first = new Map<string, number>();
  keys.forEach((key, index) => {
    if (!first.has(key)) first.set(key, index);
  });
  const half = keys.length / 2;
  const block =
    Number.isInteger(half) &&
    half >= SHORTEST_BLOCK &&
    new Set(keys.slice(0, half)).size > 2 &&
    keys.slice(0, half).every((key, i) => key === keys[half + i]);
  const twins = block
    ? keys.map((_, index) => index).slice(half)
    : keys.flatMap((key, index) =>
        survey.readings[index].time !== undefined && (first.get(key) ?? index) < index ? [index] : [],
      );
  if (twins.length === 0) return [];
  return [
    {
      check: "duplicate rows",
      severity: "warning",
      message: `${twins.length} ${twins.length === 1 ? "row is" : "rows are"} the same as ${twins.length === 1 ? "an earlier one" : "earlier ones"}, to the last digit. If they were pasted twice, strike them: they are not repeats.`,
      readings: twins,
    },
  ];
};

function keyOf(reading: Reading): string {
  if (isPositioning(reading)) {
    return [reading.target, reading.direction, reading.reading, reading.run, reading.time].join("|");
  }
  const values = isPair(reading) ? [reading.advancing, reading.retracting] : [reading.backlash];
  return [reading.position, ...values, reading.time].join("|");
}
