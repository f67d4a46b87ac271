import fc from "fast-check";
import Papa from "papaparse";
import { expect, test } from "vitest";
import { readInspection } from "../../src/inspection/open.ts";
import type { Outcome } from "../../src/inspection/problem.ts";
import { inspectionFromCsv } from "../../src/intake/inspectionFromCsv.ts";
import { WHOLE } from "../../src/intake/missing.ts";
import { readCsv } from "../../src/intake/readCsv.ts";
import { surveyCsv } from "../../src/intake/writeCsv.ts";
import { propertyRuns } from "../propertyRuns.ts";
import { anyInspection } from "./anyInspection.ts";

const LABELS = { id: "a log", name: "a log", taken: "1970-01-01" };
const mark = fc.constantFrom("." as const, "," as const);

function valueIn<T>(outcome: Outcome<T>): T {
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problem));
  return outcome.value;
}

test("any inspection survives being written as CSV, survey by survey, and read back", () => {
  fc.assert(
    fc.property(anyInspection, mark, (made, decimalMark) => {
      const inspection = valueIn(readInspection(made));
      for (const survey of inspection.surveys) {
        const bytes = new TextEncoder().encode(surveyCsv(inspection, survey, decimalMark));
        const csv = valueIn(readCsv(bytes));
        expect(csv.refused).toEqual([]);
        const back = valueIn(inspectionFromCsv(csv, LABELS, WHOLE)).inspection;
        expect(back).toEqual({ ...inspection, surveys: [survey] });
      }
    }),
    { numRuns: propertyRuns(50) },
  );
});

test("no cell of any inspection's CSV is one that a spreadsheet takes for a formula", () => {
  const decimals = { ".": /^-?\d+(\.\d+)?(e[+-]?\d+)?$/, ",": /^-?\d+(,\d+)?(e[+-]?\d+)?$/ };
  fc.assert(
    fc.property(anyInspection, mark, (inspection, decimalMark) => {
      for (const survey of inspection.surveys) {
        const text = surveyCsv(inspection, survey, decimalMark);
        const { data, errors } = Papa.parse<string[]>(text, { delimiter: decimalMark === "," ? ";" : "," });
        expect(errors).toEqual([]);
        for (const cell of data.flat().filter((each) => /^[=+\-@\t\r\n＝＋－＠]/.test(each))) {
          expect(cell).toMatch(decimals[decimalMark]);
        }
      }
    }),
    { numRuns: propertyRuns(50) },
  );
});
