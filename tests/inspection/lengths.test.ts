import { describe, expect, test } from "vitest";
import { decimalsFor, lengthsIn } from "../../src/inspection/lengths.ts";

describe("the decimals that show steps", () => {
  test.each([
    [1, 0],
    [0.01, 2],
    [0.02, 2],
    [0.005, 3],
    [0.002, 3],
    [0.0005, 4],
    [0.001, 3],
    [25, 0],
  ])("of %d are %d", (step, decimals) => {
    expect(decimalsFor(step)).toBe(decimals);
  });
});

describe("lengths in millimetres", () => {
  test("are written to hundredths, or to the micrometre where the indicator reads it", () => {
    expect(lengthsIn("mm").lostMotion(0.2149)).toBe("0.21 mm");
    expect(lengthsIn("mm", 0.02).lostMotion(0.2149)).toBe("0.21 mm");
    expect(lengthsIn("mm", 0.001).lostMotion(0.2149)).toBe("0.215 mm");
    expect(lengthsIn("mm", 0.0001).figure(0.2149)).toBe("0.215");
    expect(lengthsIn("mm", 0).figure(0.2)).toBe("0.20");
  });

  test("of places are written as they were stated, or to the whole millimetre where worked out", () => {
    expect(lengthsIn("mm").position(37.5)).toBe("37.5 mm");
    expect(lengthsIn("mm").spot(136.7)).toBe("137 mm");
    expect(lengthsIn("mm").figure(-0.001)).toBe("0.00");
  });
});

describe("lengths in inches", () => {
  test("are written to thousandths, or to tenths of them where the indicator reads them", () => {
    expect(lengthsIn("in").lostMotion(0.2032)).toBe("0.008 in");
    expect(lengthsIn("in", 0.0127).lostMotion(0.2032)).toBe("0.0080 in");
  });

  test("of places are written as they were stated, or to the twentieth where worked out", () => {
    expect(lengthsIn("in").position(25.4 * 3.125)).toBe("3.125 in");
    expect(lengthsIn("in").spot(25.4 * 3.14)).toBe("3.15 in");
  });
});
