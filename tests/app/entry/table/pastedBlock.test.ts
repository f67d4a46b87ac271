import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { blankRow, type Row } from "../../../../src/app/editing/rows.ts";
import { blockOf, withBlock } from "../../../../src/app/entry/table/pastedBlock.ts";

describe("a block copied from a spreadsheet", () => {
  test.each([
    [
      "0\t0.21\n25\t0.20",
      [
        ["0", "0.21"],
        ["25", "0.20"],
      ],
    ],
    [
      "0\t0,21\r\n25\t0,20\r\n",
      [
        ["0", "0.21"],
        ["25", "0.20"],
      ],
    ],
    ["0,5\t1,234\n", [["0.5", "1.234"]]],
    ['12 thou\t3-1/2"\n', [["12 thou", '3-1/2"']]],
    ["0\t\n25\t0.2\t\n", [["0"], ["25", "0.2"]]],
    ["0\toops", [["0", "oops"]]],
  ])("%j is its cells", (text, cells) => {
    expect(blockOf(text)).toEqual(cells);
  });

  test.each(["Position\tBacklash\n0\t0.2", "readings of today\n0\t0.2", "", "\t\n"])("%j is none", (text) => {
    expect(blockOf(text)).toBeNull();
  });
});

const row = (position: string, backlash: string): Row => ({ ...blankRow(), cells: { position, backlash } });
const cellsOf = (rows: readonly Row[] | null) => rows?.map(({ cells }) => [cells.position, cells.backlash]);
const COLUMNS = ["position", "backlash"] as const;

describe("a block put over the table", () => {
  const rows = [row("0", "0.1"), row("25", "0.2"), row("50", "0.3")];

  test("changes the cells from there on, and makes rows at the end", () => {
    expect(cellsOf(withBlock(rows, rows, [["0.4"], ["0.5"]], 1, ["backlash"]))).toEqual([
      ["0", "0.1"],
      ["25", "0.4"],
      ["50", "0.5"],
    ]);
    expect(cellsOf(withBlock(rows, rows, [["75", "0.4"], ["100"]], 2, COLUMNS))).toEqual([
      ["0", "0.1"],
      ["25", "0.2"],
      ["75", "0.4"],
      ["100", undefined],
    ]);
  });

  test("goes down along the rows as they are looked at, which keep their order", () => {
    const falling = rows.toReversed();
    expect(cellsOf(withBlock(rows, falling, [["0.9"], ["0.8"]], 0, ["backlash"]))).toEqual([
      ["0", "0.1"],
      ["25", "0.8"],
      ["50", "0.9"],
    ]);
  });

  test("is refused where it is wider than the columns", () => {
    expect(withBlock(rows, rows, [["1", "2", "3"]], 0, COLUMNS)).toBeNull();
  });
});

test("whatever the figures, a block of them is pasted as it was copied", () => {
  const figure = fc.integer({ min: 0, max: 99_999 }).map((count) => (count / 100).toFixed(2));
  const block = fc.array(fc.tuple(figure, figure), { minLength: 1, maxLength: 30 });
  fc.assert(
    fc.property(block, fc.constantFrom(".", ","), fc.constantFrom("\n", "\r\n"), (cells, mark, lineEnd) => {
      const text = cells.map((each) => each.join("\t").replaceAll(".", mark)).join(lineEnd);
      expect(cellsOf(withBlock([], [], blockOf(text) ?? [], 0, COLUMNS))).toEqual(cells);
    }),
  );
});
