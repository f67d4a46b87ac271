import { table } from "../../document/pieces.ts";
import { html } from "../../markup.ts";
import { readingColumns } from "../readingColumns.ts";
import type { SectionMaker } from "../reported.ts";

/** A table with more columns than these, or with fewer rows, is not broken into two beside one another. */
const MOST_COLUMNS = 4;
const LEAST_ROWS = 12;

/** Every reading as it was read, in the order in which it was taken, struck ones with their reason. */
export const readings: SectionMaker = (reported) => {
  const columns = readingColumns(reported);
  const rows = reported.survey.readings.map(({ excluded }, index) => ({
    cells: columns.map(({ cells }) => cells[index] ?? ""),
    ...(excluded === undefined ? {} : { as: "struck" as const }),
  }));
  const isHalved =
    rows.length >= LEAST_ROWS &&
    columns.length <= MOST_COLUMNS &&
    columns.every(({ holds }) => holds === "figures");
  return {
    title: "All readings",
    content: [
      html`<p>As they were read, in their order. Struck readings do not count.</p>`,
      html`<div class="compact ${isHalved ? "side-by-side" : ""}">${table(columns, rows)}</div>`,
    ],
  };
};
