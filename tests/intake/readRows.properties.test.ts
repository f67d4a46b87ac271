import fc from "fast-check";
import { expect, test } from "vitest";
import { readCsv } from "../../src/intake/readCsv.ts";
import { propertyRuns } from "../propertyRuns.ts";

const figure = fc.oneof(
  fc.tuple(fc.constantFrom("", "-", "+"), fc.nat(99_999), fc.nat(999_999)).map(([sign, whole, decimals]) => {
    return `${sign}${whole}.${decimals}`;
  }),
  fc.double({ noNaN: true, noDefaultInfinity: true, min: -1e6, max: 1e6 }).map(String),
  fc.constantFrom(
    "0",
    "-0",
    "7.",
    ".5",
    "1,234",
    "1.234",
    "1.234,5",
    "0,21",
    "3 1/2",
    "8 thou",
    "x",
    "",
    "-",
    " 4 ",
  ),
);
const note = fc.constantFrom("", "gib", "no", "-", "#2", 'a "b" c', "=1+2", "n/a");
const separator = fc.constantFrom(",", ";", "\t");

test("rows are read alike with their cells in quotes and without", () => {
  fc.assert(
    fc.property(
      fc.array(fc.tuple(figure, figure, note), { minLength: 1 }),
      separator,
      fc.constantFrom("mm", "µm", "thou"),
      (rows, between, unit) => {
        const log = (written: (cell: string) => string): string =>
          [["position (mm)", `backlash (${unit})`, "note", "unused"], ...rows.map((cells) => [...cells, "x"])]
            .map((cells) => cells.map(written).join(between))
            .join("\n");
        const inQuotes = (cell: string): string => `"${cell.replaceAll('"', '""')}"`;
        const all = readCsv(log(inQuotes));
        const few = readCsv(log((cell) => (cell.includes(between) ? inQuotes(cell) : cell)));
        if (!all.ok || !few.ok) {
          expect(all.ok).toBe(few.ok);
          return;
        }
        expect(all.value.readings).toEqual(few.value.readings);
        expect(all.value.refused.map(({ row, reason }) => [row, reason])).toEqual(
          few.value.refused.map(({ row, reason }) => [row, reason]),
        );
      },
    ),
    { numRuns: propertyRuns(200) },
  );
});
