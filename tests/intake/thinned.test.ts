import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Reading } from "../../src/inspection/schema.ts";
import { thinned } from "../../src/intake/thinned.ts";

describe("a long log, thinned", () => {
  test("is left as it is where it is no longer than it may be", () => {
    const readings = [{ position: 3, backlash: 0.2 }];
    expect(thinned(readings, 1)).toBe(readings);
  });

  test("gives of every stretch of a continuous log its median reading", () => {
    // In every millimetre lost motions of 0.1, 0.2 … 0.5, in no order.
    const readings = Array.from({ length: 50 }, (_, index) => ({
      position: Math.floor(index / 5) + (index % 5) / 10,
      backlash: [0.3, 0.1, 0.5, 0.2, 0.4][index % 5] ?? 0,
    }));
    expect(thinned(readings, 10).map(({ backlash }) => backlash)).toEqual(Array(10).fill(0.3));
  });

  test("keeps repeats at stations apart, evenly spaced in order of size", () => {
    const repeats = Array.from({ length: 100 }, (_, index) => ((index * 37) % 100) / 100);
    const readings = [0, 50, 100].flatMap((position) => repeats.map((backlash) => ({ position, backlash })));
    const kept = thinned(readings, 12);
    const at = (place: number): readonly number[] =>
      kept.flatMap((item) => (item.position === place ? [Number(item.backlash)] : [])).sort();
    for (const place of [0, 50, 100]) expect(at(place)).toEqual([0.12, 0.37, 0.62, 0.87]);
  });

  test("is never longer than it may be, holds only readings of the log, in their order, and no struck ones", () => {
    const reading = fc.record(
      {
        position: fc.integer({ min: 0, max: 500 }),
        backlash: fc.double({ min: 0, max: 1 }),
        excluded: fc.constant("slip"),
      },
      { requiredKeys: ["position", "backlash"] },
    );
    fc.assert(
      fc.property(fc.array(reading, { maxLength: 200 }), fc.integer({ min: 1, max: 60 }), (all, most) => {
        const kept = thinned(all as readonly Reading[], most);
        if (all.length <= most) return;
        expect(kept.length).toBeLessThanOrEqual(most);
        expect(kept.some(({ excluded }) => excluded !== undefined)).toBe(false);
        const order = kept.map((item) => all.indexOf(item as (typeof all)[number]));
        expect(order).toEqual([...new Set(order)].sort((a, b) => a - b));
        expect(order.includes(-1)).toBe(false);
        expect(kept.length === 0).toBe(all.every(({ excluded }) => excluded !== undefined));
      }),
    );
  });
});
