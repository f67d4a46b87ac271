import { describe, expect, it } from "vitest";
import { isTooRare } from "../../src/analysis/falseAlarms.ts";

describe("a chance that is too small for scatter", () => {
  it("is one in five hundred, shared out among the looks", () => {
    expect(isTooRare(0.002)).toBe(true);
    expect(isTooRare(0.00201)).toBe(false);
    expect(isTooRare(0.0005, 4)).toBe(true);
    expect(isTooRare(0.0005, 5)).toBe(false);
  });
});
