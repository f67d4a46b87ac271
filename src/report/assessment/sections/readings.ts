import { table } from "../../document/table.ts";
import { readingColumns } from "../readingColumns.ts";
import type { SectionMaker } from "../reported.ts";

/** Every reading as it was read, in the order in which it was taken, struck ones with their reason. */
export const readings: SectionMaker = (reported) => {
  const columns = readingColumns(reported);
  const rows = reported.survey.readings.map(({ excluded }, index) => ({
    cells: columns.map(({ cells }) => cells[index] ?? ""),
    ...(excluded === undefined ? {} : { as: "struck" as const }),
  }));
  return {
    title: "All readings",
    content: table(columns, rows, "As they were read, in their order. Struck readings do not count."),
  };
};
