import { describe, expect, it } from "vitest";
import { slipIn } from "../../../src/analysis/outliers/slips.ts";

/** How near a value comes to 0.2 mm, as a ratio. */
const near = (value: number): number => Math.min(value / 0.2, 0.2 / value);

describe("the slip in a figure", () => {
  it.each([
    [2, "ten times", "a slipped decimal point"],
    [0.02, "a tenth of", "a slipped decimal point"],
    [5.08, "25.4 times", "millimetres taken for inches"],
    [0.00787, "1/25.4 of", "inches taken for millimetres"],
  ])("of %f against 0.2 is the one that explains it best", (value, words, cause) => {
    expect(slipIn(value, near, 0.3)).toMatchObject({ words, cause });
  });

  it("is none where what was put right agrees too little", () => {
    expect(slipIn(1.8, near, 0.89)?.factor).toBe(10);
    expect(slipIn(1.8, near, 0.91)).toBeUndefined();
    expect(slipIn(2, near, 1)?.factor).toBe(10);
    expect(slipIn(0.2, near, 0.9)).toBeUndefined();
    expect(slipIn(-2, near, 0.9)).toBeUndefined();
  });
});
