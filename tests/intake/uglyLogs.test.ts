import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { readCsv } from "../../src/intake/readCsv.ts";
import { type ReadLog, type RefusedLog, UGLY_LOGS } from "./ugly-logs/table.ts";

const FOLDER = join(import.meta.dirname, "ugly-logs");

const read = UGLY_LOGS.filter((log): log is ReadLog => "readings" in log);
const refused = UGLY_LOGS.filter((log): log is RefusedLog => "fails" in log);

/** A reading of which the table gives the figures only. */
function inFull(reading: ReadLog["readings"][number]): unknown {
  if (!Array.isArray(reading)) return reading;
  const [position, first, retracting] = reading;
  return retracting === undefined
    ? { position, backlash: first }
    : { position, advancing: first, retracting };
}

describe("a log as a shop might keep it", () => {
  test("is in the table for every file of the folder", () => {
    const files = readdirSync(FOLDER).filter((name) => name.endsWith(".csv"));
    expect(UGLY_LOGS.map(({ file }) => file).sort()).toEqual(files.sort());
    expect(files.length).toBeGreaterThanOrEqual(40);
  });

  test.each(read)(
    "$file: $what",
    ({ file, options, units, method = "push-pull", readings, refused: rows = [] }) => {
      const outcome = readCsv(readFileSync(join(FOLDER, file)), options);
      if (!outcome.ok) throw new Error(JSON.stringify(outcome.problem));
      const marksAside = readings.map((reading, index) =>
        Array.isArray(reading) ? withoutMarks(outcome.value.readings[index]) : outcome.value.readings[index],
      );
      expect(marksAside).toEqual(readings.map(inFull));
      expect(outcome.value.readings).toHaveLength(readings.length);
      expect(outcome.value.units).toBe(units);
      expect(outcome.value.method).toBe(method);
      expect(outcome.value.refused.map(({ row }) => row)).toEqual(rows.map(([row]) => row));
      for (const [index, [, reason]] of rows.entries()) {
        expect(outcome.value.refused[index]?.reason).toContain(reason);
      }
    },
  );

  test.each(refused)("$file is refused: $what", ({ file, options, fails: [where, reason] }) => {
    const outcome = readCsv(readFileSync(join(FOLDER, file)), options);
    expect(outcome).toMatchObject({ ok: false, problem: { where, what: expect.stringContaining(reason) } });
  });
});

function withoutMarks(reading: Readonly<Record<string, unknown>> = {}): unknown {
  const { note: _note, time: _time, excluded: _excluded, ...figures } = reading;
  return figures;
}
