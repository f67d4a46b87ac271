import { table } from "../../document/table.ts";
import { html } from "../../markup.ts";
import { readingColumns } from "../readingColumns.ts";
import type { SectionMaker } from "../reported.ts";

/** Wider tables than this leave no room for a second one beside them. */
const MOST_SIDE_BY_SIDE = 4;

/** Every reading as it was read, in the order in which it was taken, struck ones with their reason. */
export const readings: SectionMaker = (reported) => {
  const columns = readingColumns(reported);
  const rows = reported.survey.readings.map(({ excluded }, index) => ({
    cells: columns.map(({ cells }) => cells[index] ?? ""),
    ...(excluded === undefined ? {} : { as: "struck" as const }),
  }));
  const isNarrow = columns.length <= MOST_SIDE_BY_SIDE && columns.every(({ holds }) => holds === "figures");
  return {
    title: "All readings",
    content: [
      html`<p>As they were read, in their order. Struck readings do not count.</p>`,
      html`<div class="${isNarrow ? "side-by-side" : ""}">${table(columns, rows)}</div>`,
    ],
  };
};
