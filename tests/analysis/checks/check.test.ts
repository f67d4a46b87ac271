import { describe, expect, it } from "vitest";
import { expectedOf, nameOf } from "../../../src/analysis/checks/check.ts";
import { lengthsIn } from "../../../src/inspection/lengths.ts";
import { pushPull } from "../examples.ts";
import { surveyed } from "./surveyed.ts";

/** What the others lead one to expect of the reading with the given number, 0-based. */
function expected(readings: readonly (readonly [number, number])[], index: number): number | undefined {
  const { corrected, stations } = surveyed(pushPull(readings));
  return expectedOf(corrected.readings[index], stations);
}

describe("the name of a reading", () => {
  it("counts from 1, and tells the place in the reader's unit", () => {
    const reading = { position: 120, value: 0.2, from: [6, 9] };
    expect(nameOf(reading, lengthsIn("mm"))).toBe("Reading 7 at 120 mm");
    expect(nameOf({ ...reading, position: 127 }, lengthsIn("in"))).toBe("Reading 7 at 5 in");
  });
});

describe("what a reading is expected to be", () => {
  it("is the median of the other repeats, of an odd and of an even number", () => {
    expect(
      expected(
        [
          [0, 9],
          [0, 0.3],
          [0, 0.1],
          [0, 0.2],
        ],
        0,
      ),
    ).toBeCloseTo(0.2, 12);
    expect(
      expected(
        [
          [0, 9],
          [0, 0.1],
          [0, 5],
          [0, 0.2],
          [0, 0.3],
        ],
        0,
      ),
    ).toBeCloseTo(0.25, 12);
    expect(
      expected(
        [
          [0, 9],
          [0, 0.1],
          [0, 0.3],
        ],
        0,
      ),
    ).toBeCloseTo(0.2, 12);
    expect(
      expected(
        [
          [0, 9],
          [0, 0.1],
        ],
        1,
      ),
    ).toBe(9);
  });

  it("is the middle of up to two stations to either side where it has no repeats", () => {
    const around = [
      [0, 0.9],
      [10, 0.1],
      [20, 0.2],
      [30, 9],
      [40, 0.4],
      [50, 0.3],
      [60, 0.9],
    ] as const;
    expect(expected(around, 3)).toBeCloseTo(0.25, 12);
    expect(expected(around, 0)).toBeCloseTo(0.15, 12);
    expect(expected(around, 6)).toBeCloseTo(0.35, 12);
  });

  it("is unknown where there is nothing else", () => {
    expect(expected([[0, 9]], 0)).toBeUndefined();
  });
});
