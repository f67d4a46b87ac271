import { describe, expect, it } from "vitest";
import { duplicateRows } from "../../../src/analysis/checks/duplicateRows.ts";
import { correct } from "../../../src/analysis/correct/corrections.ts";
import type { Reading } from "../../../src/inspection/schema.ts";
import { surveyOf } from "../examples.ts";
import { CLEAN, surveyed } from "./checkInput.ts";

const twinsIn = (readings: readonly Reading[]) => {
  const method = readings.some((item) => "target" in item) ? "positioning" : "indicator-pair";
  const survey = surveyOf({ method, readings });
  return duplicateRows({ survey, corrected: correct(survey, 4), outliers: [] });
};
const named = (readings: readonly Reading[]) => twinsIn(readings).map((finding) => finding.readings);

/** Rows that differ from one another. */
const rows = (count: number): readonly Reading[] =>
  Array.from({ length: count }, (_, i) => ({ position: 10 * i, backlash: 0.2 + 0.01 * i }));

const twice = (block: readonly Reading[]) => [...block, ...block];

describe("duplicate rows", () => {
  it("are warned of where a block was pasted twice", () => {
    expect(twinsIn(twice(rows(30)))).toEqual([
      {
        check: "duplicate rows",
        severity: "warning",
        message:
          "30 rows are the same as earlier ones, to the last digit. If they were pasted twice, strike them: they are not repeats.",
        readings: Array.from({ length: 30 }, (_, i) => 30 + i),
      },
    ]);
  });

  it("are not a short block, which may repeat by chance", () => {
    expect(twinsIn(twice(rows(4)))).toEqual([]);
  });

  it("are not rows of which one differs, in whatever column", () => {
    const block = rows(6);
    const [first, ...others] = block;
    const mistaken = surveyOf({
      method: "push-pull",
      readings: [...block, { ...first, backlash: 0.9 }, ...others],
    });
    expect(duplicateRows(surveyed(mistaken))).toEqual([]);
    expect(twinsIn([...block, { ...first, position: 5 }, ...others])).toEqual([]);
    expect(twinsIn([...block, { ...first, time: "09:00" }, ...others])).toEqual([]);
    expect(twinsIn([...block, ...block.toReversed()])).toEqual([]);
  });

  it("are not a block with another row after it", () => {
    expect(twinsIn([...twice(rows(30)), { position: 990, backlash: 0.5 }])).toEqual([]);
  });

  it("are found behind rows that were not pasted", () => {
    expect(named([{ position: 990, backlash: 0.5 }, ...twice(rows(30))])).toEqual([
      Array.from({ length: 30 }, (_, i) => 31 + i),
    ]);
  });

  it("are not a few values again and again, as repeats at one place are", () => {
    const repeats = (values: readonly number[]) => values.map((backlash) => ({ position: 0, backlash }));
    const few = Array.from({ length: 12 }, (_, i) => (i % 3 === 0 ? 0.21 : 0.2));
    const many = Array.from({ length: 12 }, (_, i) => 0.2 + 0.01 * ((5 * i) % 12));
    expect(twinsIn(twice(repeats(few)))).toEqual([]);
    expect(twinsIn(twice(repeats(many)))).toHaveLength(1);
  });

  it("are single rows where each has its time", () => {
    const at = (time: string, backlash: number) => ({ position: 0, backlash, time });
    expect(twinsIn([at("09:00", 0.2), at("09:01", 0.2), at("09:00", 0.2)])).toEqual([
      {
        check: "duplicate rows",
        severity: "warning",
        message:
          "1 row is the same as an earlier one, to the last digit. If they were pasted twice, strike them: they are not repeats.",
        readings: [2],
      },
    ]);
    expect(
      twinsIn([
        { position: 0, backlash: 0.2 },
        { position: 0, backlash: 0.2 },
      ]),
    ).toEqual([]);
  });

  it("are told apart column by column, not by their digits run together", () => {
    const at = (position: number, backlash: number) => ({ position, backlash, time: "09:00" });
    expect(named([at(1, 12), at(11, 2)])).toEqual([]);
    const target = { direction: "advancing", time: "09:00" } as const;
    expect(
      named([
        { ...target, target: 5, reading: 1, run: 12 },
        { ...target, target: 5, reading: 11, run: 2 },
      ]),
    ).toEqual([]);
  });

  it("are found among pairs by both their readings", () => {
    const pair = (advancing: number, retracting: number) => ({
      position: 0,
      advancing,
      retracting,
      time: "09:00",
    });
    expect(named([pair(0.5, 0.3), pair(0.5, 0.3)])).toEqual([[1]]);
    expect(named([pair(0.5, 0.3), pair(0.5, 0.2)])).toEqual([]);
    expect(named([pair(0.5, 0.3), pair(0.4, 0.3)])).toEqual([]);
  });

  it("are found among positioning readings by target, direction, reading and run", () => {
    const first = { target: 50, direction: "advancing", reading: 50.01, run: 1, time: "09:00" } as const;
    expect(named([first, first])).toEqual([[1]]);
    expect(named([first, { ...first, target: 60 }])).toEqual([]);
    expect(named([first, { ...first, direction: "retracting" }])).toEqual([]);
    expect(named([first, { ...first, reading: 50.02 }])).toEqual([]);
    expect(named([first, { ...first, run: 2 }])).toEqual([]);
    expect(named([first, { ...first, time: "09:01" }])).toEqual([]);
  });

  it("are none in a clean survey", () => {
    expect(duplicateRows({ survey: CLEAN, corrected: correct(CLEAN, 4), outliers: [] })).toEqual([]);
  });
});
