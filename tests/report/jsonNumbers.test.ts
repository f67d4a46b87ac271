import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { roundedShares } from "../../src/report/jsonNumbers.ts";

describe("rounded shares", () => {
  it("give what rounding down leaves to the largest remainders", () => {
    expect(roundedShares({ a: 1 / 3, b: 1 / 3, c: 1 / 3 }, 2)).toEqual({ a: 0.34, b: 0.33, c: 0.33 });
    expect(roundedShares({ a: 0.055, b: 0.058, c: 0.887 }, 2)).toEqual({ a: 0.05, b: 0.06, c: 0.89 });
  });

  it("add up to the whole and lie within a unit of what they were, whatever they were", () => {
    const counts = fc.array(fc.nat({ max: 4000 }), { minLength: 5, maxLength: 5 });
    fc.assert(
      fc.property(counts, (drawn) => {
        const total = drawn.reduce((sum, count) => sum + count, 0);
        fc.pre(total > 0);
        const shares = Object.fromEntries(drawn.map((count, index) => [`class ${index}`, count / total]));
        const rounded = roundedShares(shares, 6);
        const millionths = Object.values(rounded).map((share) => Math.round(share * 1e6));
        expect(millionths.reduce((sum, each) => sum + each, 0)).toBe(1e6);
        for (const [name, share] of Object.entries(shares)) {
          expect(Math.abs((rounded[name] ?? Number.NaN) - share)).toBeLessThan(1.000001e-6);
        }
      }),
    );
  });
});
