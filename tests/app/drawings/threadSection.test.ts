import { describe, expect, it } from "vitest";
import { sectionExaggeration, threadSection } from "../../../src/app/drawings/threadSection.ts";

const TRAPEZOIDAL = { flankShare: 0.134 };
/** A pitch of 4 mm is drawn 128 pixels wide. */
const SCALE = 128 / 4;

type Corners = readonly { readonly x: number; readonly y: number }[];

/** Where an outline crosses a height, from left to right. */
function crossings(corners: Corners, y: number): readonly number[] {
  return corners
    .slice(1)
    .flatMap((to, index) => {
      const from = corners[index] ?? to;
      if (from.y > y === to.y > y) return [];
      return [from.x + ((y - from.y) / (to.y - from.y)) * (to.x - from.x)];
    })
    .sort((a, b) => a - b);
}

describe("the section through screw and nut", () => {
  const drawn = threadSection({ uniform: 0.1, uneven: 0.2 }, 4, TRAPEZOIDAL, 2);

  it("shows the whole clearance on one side, exaggerated as it says", () => {
    expect(drawn.gap.to - drawn.gap.from).toBeCloseTo(0.3 * 2 * SCALE, 9);
  });

  it("lets the nut touch the screw on the other side, all along the flank", () => {
    for (const y of [60, 70, 82, 95, 104]) {
      const screw = crossings(drawn.screw, y);
      const nut = crossings(drawn.nut, y);
      const touching = screw.filter((x) => nut.some((other) => Math.abs(other - x) < 1e-6));
      expect(touching.length).toBeGreaterThanOrEqual(2);
    }
  });

  it("has the gap between nut and screw at its height", () => {
    const { from, to, y } = drawn.gap;
    expect(crossings(drawn.nut, y).some((x) => Math.abs(x - from) < 1e-6)).toBe(true);
    expect(crossings(drawn.screw, y).some((x) => Math.abs(x - to) < 1e-6)).toBe(true);
  });

  it("shows what has worn off the screw, and nothing where it has not worn", () => {
    const worn = crossings(drawn.screw, 82);
    const unworn = crossings(drawn.unworn ?? [], 82);
    const [left, right] = unworn;
    expect(unworn).toHaveLength(2);
    expect(worn.some((x) => Math.abs(x - (left ?? 0) - 0.1 * 2 * SCALE) < 1e-6)).toBe(true);
    expect(worn.some((x) => Math.abs((right ?? 0) - x - 0.1 * 2 * SCALE) < 1e-6)).toBe(true);
    expect(threadSection({ uniform: 0.1, uneven: 0 }, 4, TRAPEZOIDAL, 2).unworn).toBeNull();
  });

  it("exaggerates by a round factor that leaves most of a pitch to the threads", () => {
    expect(sectionExaggeration(0.3, { pitch: 4 })).toBe(2);
    expect(sectionExaggeration(0.02, { pitch: 4 })).toBe(50);
    expect(sectionExaggeration(1, { pitch: 4 })).toBe(1);
  });
});
