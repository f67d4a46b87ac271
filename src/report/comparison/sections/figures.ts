import { lines, table, withUnits } from "../../document/pieces.ts";
import { html, type Markup } from "../../markup.ts";
import { comparedQuantities, type Figure, withoutEndFloat } from "../figures.ts";
import type { ComparisonSectionMaker } from "../reportedComparison.ts";

/** Every quantity before and after, and how much it has changed. */
export const figures: ComparisonSectionMaker = ({ comparison, lengths }) => {
  const { from, to } = comparison;
  return {
    title: "The figures",
    as: "whole",
    content: [
      table(
        ["Quantity", "Before", "After", "Change"].map((name) => ({ name, holds: "words" })),
        comparedQuantities(comparison, lengths).map(({ name, before, after, change }) => ({
          cells: [name, cell(before), cell(after), cell(change)],
        })),
        `Before is the survey "${from.id}", after the survey "${to.id}". Each with the interval that holds the true value in 95 of 100 cases.`,
      ),
      lines(withoutEndFloat(comparison, lengths)),
    ],
  };
};

function cell({ value, interval }: Figure): Markup {
  return html`${withUnits(value)}${interval === "" ? [] : html`<br>${withUnits(interval)}`}`;
}
