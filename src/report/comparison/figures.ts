import type { Estimate } from "../../analysis/assessment.ts";
import type { Comparison } from "../../analysis/comparison/comparison.ts";
import type { Lengths } from "../../inspection/lengths.ts";
import type { Figure } from "../blocks.ts";
import { intervalWords } from "../words.ts";
import type { ComparisonPart } from "./compared.ts";
import { directionOf } from "./summary.ts";

/** Every quantity before and after, and how much it has changed. */
export const figures: ComparisonPart = ({ comparison, lengths }) => {
  const { from, to } = comparison;
  const rows = comparedQuantities(comparison, lengths).map(({ name, before, after, change }) => ({
    cells: [name, before, after, change],
  }));
  return {
    title: "The figures, each with its 95 % interval",
    blocks: [
      {
        kind: "table",
        caption: `Before is the survey "${from.id}", after the survey "${to.id}".`,
        columns: ["Quantity", "Before", "After", "Change"].map((name) => ({ name, holds: "words" })),
        rows,
      },
      ...withoutEndFloat(comparison, lengths).map((text) => ({ kind: "paragraph", text }) as const),
    ],
  };
};

/** The changes of the figures that matter most, by name. */
export function keyChanges({ change }: Comparison, lengths: Lengths): readonly (readonly [string, Figure])[] {
  return [
    ["Uniform part", changeOf(change.uniform, lengths)],
    ["Uneven part", changeOf(change.uneven, lengths)],
    ["Greatest lost motion", changeOf(change.greatest, lengths)],
  ];
}

/** A quantity in both surveys, and by how much it has changed. */
export interface ComparedQuantity {
  readonly name: string;
  readonly before: Figure;
  readonly after: Figure;
  readonly change: Figure;
}

/** Every quantity that two surveys are compared by. */
export function comparedQuantities(
  { from, to, change }: Comparison,
  lengths: Lengths,
): readonly ComparedQuantity[] {
  const quantity = (
    name: string,
    before: Estimate | null,
    after: Estimate | null,
    difference: Estimate | null,
  ): ComparedQuantity => ({
    name,
    before: amountOf(before, lengths),
    after: amountOf(after, lengths),
    change: difference === null ? NOT_KNOWN : changeOf(difference, lengths),
  });
  const [before, after] = [from.assessment, to.assessment];
  return [
    quantity("Uniform part", before.uniform, after.uniform, change.uniform),
    quantity("Uneven part", before.uneven, after.uneven, change.uneven),
    quantity("Greatest lost motion", before.greatest, after.greatest, change.greatest),
    quantity("End float", before.endFloat, after.endFloat, change.endFloat),
  ];
}

const NOT_MEASURED: Figure = { value: "not measured", interval: "" };
const NOT_KNOWN: Figure = { value: "not known", interval: "" };

function amountOf(amount: Estimate | null, lengths: Lengths): Figure {
  if (amount === null) return NOT_MEASURED;
  return { value: lengths.lostMotion(amount.value), interval: intervalWords(amount, lengths) };
}

/** What changed in nut and screw alone, in a sentence; nothing where end float was not measured both times. */
export function withoutEndFloat({ change }: Comparison, lengths: Lengths): readonly string[] {
  if (change.uniformLessEndFloat === null) return [];
  const { value, interval } = changeOf(change.uniformLessEndFloat, lengths);
  return [
    `Change of the uniform part without the end float, which is nut and screw alone: ${value}, ${interval}.`,
  ];
}

/** How much less or more: `0.192 mm less`, `give or take 0.005`; where none is shown, what it may be. */
export function changeOf(change: Estimate, lengths: Lengths): Figure {
  const { value, low, high } = change;
  const amount = { value: Math.abs(value), low: value < 0 ? -high : low, high: value < 0 ? -low : high };
  switch (directionOf(change, lengths)) {
    case "less":
      return { value: `${lengths.lostMotion(amount.value)} less`, interval: intervalWords(amount, lengths) };
    case "more":
      return { value: `${lengths.lostMotion(amount.value)} more`, interval: intervalWords(amount, lengths) };
    case "none":
      return { value: "none shown", interval: `from ${lengths.figure(low)} to ${lengths.lostMotion(high)}` };
  }
}
