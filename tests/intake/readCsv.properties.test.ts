import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Reading } from "../../src/inspection/schema.ts";
import { readCsv } from "../../src/intake/readCsv.ts";
import { propertyRuns } from "../propertyRuns.ts";

const length = fc
  .double({ noNaN: true, noDefaultInfinity: true, min: -1e6, max: 1e6 })
  .map((value) => value + 0);
const backlashReading = fc.record({ position: length, backlash: length });
const pairReading = fc.record({ position: length, advancing: length, retracting: length });
const quoted = (text: string): string => `"${text.replaceAll('"', '""')}"`;
/** Pieces that logs are made of, and that parsers trip over. */
const piece = fc.constantFrom(
  ...[
    "position",
    "backlash",
    "advancing",
    "retracting",
    "1",
    "0.2",
    "0,2",
    "1.234,5",
    '3-1/2"',
    "12 thou",
    "-",
  ],
  ...[
    ",",
    ";",
    "\t",
    "|",
    "\n",
    "\r\n",
    '"',
    "'",
    "#",
    "sep=;\n",
    "slide.screw.lead: 4\n",
    " ",
    "(mm)",
    "\0",
    "[",
  ],
);
const oddText = fc.oneof(
  fc.string(),
  fc.string({ unit: "binary" }),
  fc.array(piece).map((parts) => parts.join("")),
);

function rowsOf(csv: string, columns: readonly string[]): readonly Reading[] {
  const outcome = readCsv(`${columns.join(",")}\n${csv}`);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problem));
  expect(outcome.value.refused).toEqual([]);
  return outcome.value.readings;
}

describe("reading a log", () => {
  test("never throws, whatever the text", () => {
    fc.assert(
      fc.property(oddText, (text) => {
        const outcome = readCsv(text);
        expect(outcome.ok ? outcome.value.readings.length : outcome.problem.cure.length).toBeGreaterThan(0);
      }),
      { numRuns: propertyRuns(200) },
    );
  });

  test("never throws below headings that it knows", () => {
    fc.assert(
      fc.property(oddText, (text) => {
        expect(() => readCsv(`position (mm),backlash,note\n0,0.2,\n${text}`)).not.toThrow();
      }),
      { numRuns: propertyRuns(200) },
    );
  });

  test("never throws, whatever the bytes", () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 400 }), (bytes) => {
        expect(() => readCsv(bytes)).not.toThrow();
      }),
      { numRuns: propertyRuns(100) },
    );
  });

  test("gives for every cell that should hold a reading the reading or a refusal that names its row", () => {
    const cell = fc.oneof(
      fc.constantFrom("0", "12.5", "0.21", "-0.1", "x", "1e9", "3 1/2", "0.2 mm", "7 thou", "5 div", "?"),
      fc.string({ unit: fc.constantFrom(..."abc 0123456789.,/'°") }).filter((text) => /[^-–—\s]/.test(text)),
    );
    fc.assert(
      fc.property(fc.array(fc.tuple(cell, cell)), (rows) => {
        const lines = rows.map((cells, index) => [`${index + 1}`, ...cells.map(quoted)].join(";"));
        const outcome = readCsv(
          ["position (mm);backlash 1;backlash 2", "0;0.2 mm;0.2 mm", ...lines].join("\n"),
        );
        if (!outcome.ok) throw new Error(JSON.stringify(outcome.problem));
        const refused = outcome.value.refused.map(({ row }) => row);
        rows.forEach((_, index) => {
          const line = index + 3;
          const ofRow = outcome.value.readings.filter(({ position }) => position === index + 1).length;
          const refusals = refused.filter((row) => row === line).length;
          expect(ofRow + refusals).toBe(2);
        });
      }),
    );
  });

  test("accounts for every row, whatever stands in it behind its position", () => {
    const rest = fc.oneof(
      fc.string({ unit: fc.constantFrom(...'ab1,;."\t #=-|') }),
      fc
        .array(fc.constantFrom("0.2", '"', "gib", "x", "", "1/2", '"a"'), { maxLength: 4 })
        .map((cells) => cells.join(",")),
    );
    fc.assert(
      fc.property(fc.array(rest, { minLength: 1 }), (rows) => {
        const lines = rows.map((row, index) => `${index + 1},${row}`);
        const outcome = readCsv(["position (mm),backlash (mm),note", "0,0.2,", ...lines].join("\n"));
        if (!outcome.ok) throw new Error(JSON.stringify(outcome.problem));
        const { readings, refused } = outcome.value;
        rows.forEach((_, index) => {
          const count =
            readings.filter(({ position }) => position === index + 1).length +
            refused.filter(({ row }) => row === index + 3).length;
          expect(count).toBe(1);
        });
      }),
      { numRuns: propertyRuns(100) },
    );
  });

  test("brings back the backlash that was written", () => {
    fc.assert(
      fc.property(fc.array(backlashReading, { minLength: 1 }), (readings) => {
        const csv = readings.map(({ position, backlash }) => `${position},${backlash}`).join("\n");
        expect(rowsOf(csv, ["position", "backlash"])).toEqual(readings);
      }),
    );
  });

  test("brings back pairs, notes and times, with the columns in any order", () => {
    const mark = fc
      .string({ unit: fc.constantFrom(..."abc äß,;\"'#\n"), minLength: 1 })
      // Quotation marks around it are how a text is written that would not come back plainly.
      .filter((text) => text.trim() === text && !(text.startsWith('"') && text.endsWith('"')));
    const marked = fc.record({
      ...{ position: length, advancing: length, retracting: length },
      note: mark,
      time: mark,
    });
    const columns = ["position", "advancing", "retracting", "note", "time"] as const;
    fc.assert(
      fc.property(
        fc.array(marked, { minLength: 1 }),
        fc.shuffledSubarray([...columns], { minLength: 5 }),
        (readings, order) => {
          const csv = readings
            .map((reading) => order.map((column) => quoted(String(reading[column]))).join(","))
            .join("\n");
          expect(rowsOf(csv, order)).toEqual(readings);
        },
      ),
    );
  });

  test("brings back pairs with decimal commas between semicolons", () => {
    fc.assert(
      fc.property(fc.array(pairReading, { minLength: 1 }), (readings) => {
        const line = ({ position, advancing, retracting }: (typeof readings)[number]): string =>
          [position, advancing, retracting].map((value) => value.toFixed(4).replace(".", ",")).join(";");
        const outcome = readCsv(`position;forward;reverse\n${readings.map(line).join("\n")}`);
        if (!outcome.ok) throw new Error(JSON.stringify(outcome.problem));
        expect(outcome.value.readings).toEqual(
          readings.map((reading) => ({
            position: Number(reading.position.toFixed(4)),
            advancing: Number(reading.advancing.toFixed(4)),
            retracting: Number(reading.retracting.toFixed(4)),
          })),
        );
      }),
    );
  });
});
