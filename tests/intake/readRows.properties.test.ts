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

/**
 * A row whose last cell holds quotes within quotes is beyond the quick way of reading plain rows, so the same rows
 * with and without such a cell are read in both ways.
 */
test("rows of plain figures are read alike in the quick way and in the one that reads anything", () => {
  fc.assert(
    fc.property(
      fc.array(fc.tuple(figure, figure, note), { minLength: 1 }),
      separator,
      fc.constantFrom("mm", "µm", "thou"),
      (rows, between, unit) => {
        const log = (last: string): string =>
          [
            ["position (mm)", `backlash (${unit})`, "note", "left out", "unused"],
            ...rows.map(([position, backlash, text]) =>
              [position, backlash, text, text].map((cell) => `"${cell.replaceAll('"', '""')}"`).concat(last),
            ),
          ]
            .map((cells) => cells.join(between))
            .join("\n");
        const [quick, careful] = ["plain", '"in ""quotes"""'].map((last) => readCsv(log(last)));
        if (!quick?.ok || !careful?.ok) {
          expect(quick?.ok).toBe(careful?.ok);
          return;
        }
        expect(quick.value.readings).toEqual(careful.value.readings);
        expect(quick.value.refused.map(({ row, reason }) => [row, reason])).toEqual(
          careful.value.refused.map(({ row, reason }) => [row, reason]),
        );
      },
    ),
    { numRuns: propertyRuns(200) },
  );
});
