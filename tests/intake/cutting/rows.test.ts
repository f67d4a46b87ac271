import fc from "fast-check";
import Papa from "papaparse";
import { describe, expect, test } from "vitest";
import { BLANK, BLANKS, cutRows, type Row } from "../../../src/intake/cutting/rows.ts";

/** All rows of a text, cut in blocks of about `size` characters. */
function cut(text: string, separator: string, size?: number): readonly Row[] {
  return [...cutRows(text, separator, size)].flatMap(({ rows }) => rows);
}

function rowsOf(text: string, separator: string, size?: number): readonly (readonly string[])[] {
  return cut(text, separator, size).map(({ cells }) => cells);
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
        expect(rowsOf(text, delimiter, 1)).toEqual(read.data);
      }),
      { numRuns: 1000 },
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

  test("keeps the lines and the texts of rows, in blocks of any size", () => {
    const piece = fc.constantFrom('"', '"', ",", "\n", " ", "a", "0.2", '""', '0,"x"', ' "y" ,z');
    const text = fc.array(piece, { minLength: 1 }).map((pieces) => pieces.join(""));
    fc.assert(
      fc.property(text, fc.integer({ min: 1, max: 60 }), (log, size) => {
        const rows = cut(log, ",", size);
        const lines = log.split("\n");
        let next = 1;
        for (const { line, text: written } of rows) {
          // Only blank lines may be passed over.
          expect(lines.slice(next - 1, line - 1).join("")).toBe("");
          const count = written.split("\n").length;
          expect(lines.slice(line - 1, line - 1 + count).join("\n")).toBe(written);
          next = line + count;
        }
        expect(lines.slice(next - 1).join("")).toBe("");
        expect(
          cut(log, ",")
            .filter(({ text }) => text !== "")
            .map(({ line, cells }) => [line, cells]),
        ).toEqual(rows.filter(({ text }) => text !== "").map(({ line, cells }) => [line, cells]));
      }),
      { numRuns: 2000 },
    );
  });

  test("cuts rows on both sides of a quoted note over two lines", () => {
    const log = '1,"a"\n2,"b\nc"\n3,"d"\n4,5"\n';
    expect(cut(log, ",").map(({ line, text, cells }) => [line, text, cells])).toEqual([
      [1, '1,"a"', ["1", "a"]],
      [2, '2,"b\nc"', ["2", "b\nc"]],
      [4, '3,"d"', ["3", "d"]],
      [5, '4,5"', ["4", '5"']],
    ]);
  });
});
