import { describe, expect, it } from "vitest";
import { graduationOf } from "../../../src/analysis/correct/corrections.ts";

describe("the graduation that readings lie on", () => {
  it.each([
    ["tenths", [0.2, 0.3, 0.7], 0.1],
    ["fiftieths, none of them next to another", [0.16, 0.26, 0.16], 0.02],
    ["half thousandths of an inch", [0.0005, 0.003, 0.0125], 0.0005],
    ["negative readings", [-0.06, 0.1, -0.14], 0.02],
    ["whole divisions of a dial", [98, 3, 45], 1],
    ["zeros among the readings", [0, 0.04, 0, 0.06], 0.02],
    ["positions far from zero", [250.002, 250.014, 250.01, 499.998, 13.004], 0.002],
    ["thousandths at the far end of half a metre", [499.999, 0.001, 487.653, 123.456], 0.001],
  ])("is found for %s", (_, readings, step) => {
    expect(graduationOf(readings)).toBeCloseTo(step, 12);
  });

  it("is unknown where readings do not differ in size, or there are none", () => {
    expect(graduationOf([])).toBeUndefined();
    expect(graduationOf([0, 0])).toBeUndefined();
    expect(graduationOf([0.21, 0.21])).toBeUndefined();
    expect(graduationOf([0.21, -0.21])).toBeUndefined();
  });

  it("takes what differs by less than 0.00005 for the same, above and below", () => {
    expect(graduationOf([0.1, 0.30004])).toBeCloseTo(0.1, 3);
    expect(graduationOf([0.1, 0.29996])).toBeCloseTo(0.1, 3);
  });

  it("is never finer than 0.0001, as the traces of averages would have it", () => {
    expect(graduationOf([0.1, 0.10006])).toBe(0.0001);
    expect(graduationOf([0.1, 0.09994])).toBe(0.0001);
  });
});
