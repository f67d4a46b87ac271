import { expect, test } from "vitest";
import { columnsOf } from "../../../../src/app/editing/columns.ts";
import { blankRow, type Row } from "../../../../src/app/editing/rows.ts";
import { inView, type Sorting, sortedNext } from "../../../../src/app/entry/table/sorting.ts";
import type { Survey } from "../../../../src/inspection/schema.ts";

const SURVEY: Survey = { id: "s", taken: "2026-03-14", stage: "routine", method: "push-pull", readings: [] };
const [POSITION, BACKLASH] = columnsOf(SURVEY, "mm");
const row = (position: string, backlash: string): Row => ({ ...blankRow(), cells: { position, backlash } });
const ROWS = [row("100", "0.20"), row("9", "12 thou"), row("25", "?"), row("50", "0.10")];
const positions = (rows: readonly Row[]) => rows.map(({ cells }) => cells.position);

test("a heading sorts by what the figures are, then the other way, then not at all; what cannot be read comes last", () => {
  if (POSITION === undefined || BACKLASH === undefined) throw new Error("There are two columns.");
  const views: (readonly (string | undefined)[])[] = [];
  let sorting: Sorting | null = null;
  for (const column of [BACKLASH, BACKLASH, BACKLASH, POSITION]) {
    sorting = sortedNext(sorting, column, ROWS);
    views.push(positions(inView(ROWS, sorting)));
  }
  expect(views).toEqual([
    ["50", "100", "9", "25"],
    ["9", "100", "50", "25"],
    ["100", "9", "25", "50"],
    ["9", "25", "50", "100"],
  ]);
});

test("a row that is typed in stays where it is, and a new one comes last", () => {
  if (POSITION === undefined) throw new Error("There is a column.");
  const sorting = sortedNext(null, POSITION, ROWS);
  const changed = ROWS.map((each) =>
    each.cells.position === "9" ? { ...each, cells: { position: "999" } } : each,
  );
  expect(positions(inView([...changed, row("1", "")], sorting))).toEqual(["999", "25", "50", "100", "1"]);
});
