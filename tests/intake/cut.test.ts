import fc from "fast-check";
import Papa from "papaparse";
import { describe, expect, test } from "vitest";
import { BLANK, BLANKS, cutRow } from "../../src/intake/cut.ts";
import { propertyRuns } from "../propertyRuns.ts";

/** All rows of a text, cut one after the other. */
function rowsOf(text: string, separator: string): readonly (readonly string[])[] {
  const rows: (readonly string[])[] = [];
  for (let at = 0; at < text.length; ) {
    const { cells, end } = cutRow(text, at, separator);
    rows.push(cells);
    at = end + 1;
  }
  return rows;
}

describe("cutting rows into cells", () => {
  test("agrees with a CSV library on whatever that library writes", () => {
    const cell = fc.string({ unit: fc.constantFrom(..."ab,;\"'\n |") }).map((text) => text.trim());
    const rows = fc.array(fc.array(cell, { minLength: 2, maxLength: 4 }), { minLength: 1 });
    fc.assert(
      fc.property(rows, fc.constantFrom(",", ";", "|", "\t"), (data, delimiter) => {
        const text = Papa.unparse(data, { delimiter, newline: "\n", quotes: true });
        const read = Papa.parse<string[]>(text, { delimiter, newline: "\n" });
        expect(read.errors).toEqual([]);
        expect(rowsOf(text, delimiter)).toEqual(read.data);
      }),
      { numRuns: propertyRuns(200) },
    );
  });

  test.each([
    ['1",8 thou', ",", [['1"', "8 thou"]]],
    ['0; "0,21" ;x', ";", [["0", "0,21", "x"]]],
    ['0,"a ""b"" c"', ",", [["0", 'a "b" c']]],
    [
      '0,0.2,"loose\n10,0.3,\n',
      ",",
      [
        ["0", "0.2", '"loose'],
        ["10", "0.3", ""],
      ],
    ],
    [
      '0,"tight" gib\n1,2',
      ",",
      [
        ["0", '"tight" gib'],
        ["1", "2"],
      ],
    ],
    ["0  0.21   a note", BLANKS, [["0", "0.21", "a note"]]],
    ["  0 0.21", BLANK, [["0", "0.21"]]],
  ] as const)("%j", (text, separator, rows) => {
    expect(rowsOf(text, separator)).toEqual(rows);
  });

  test("takes ditto marks in a column for what they are, not for quotes around the rows between them", () => {
    const log = '0,0.2,gib snug\n10,0.3,"\n20,0.4,"\n30,0.4,"\n';
    expect(rowsOf(log, ",")).toEqual([
      ["0", "0.2", "gib snug"],
      ["10", "0.3", '"'],
      ["20", "0.4", '"'],
      ["30", "0.4", '"'],
    ]);
  });
});
