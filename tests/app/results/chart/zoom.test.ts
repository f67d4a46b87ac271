import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { between, moved, partOf, showing, zoomed } from "../../../../src/app/results/chart/zoom.ts";
import { profilePicture } from "../../../../src/picture/profilePicture.ts";
import { exampleAssessment } from "../../../report/exampleAssessment.ts";

const WHOLE = { from: 0, to: 300 };

describe("looking closer at a part of the travel", () => {
  it("keeps what is looked at where it is", () => {
    expect(zoomed(WHOLE, WHOLE, 2, 100)).toEqual({ from: 50, to: 200 });
    expect(zoomed({ from: 50, to: 200 }, WHOLE, 2, 50)).toEqual({ from: 50, to: 125 });
  });

  it("stays within the travel, and shows all of it again going back", () => {
    expect(zoomed({ from: 0, to: 75 }, WHOLE, 0.5, 75)).toEqual({ from: 0, to: 150 });
    expect(zoomed({ from: 0, to: 150 }, WHOLE, 0.5, 0)).toBeNull();
  });

  it("shows a stretch that was picked out either way round, and no less than a fiftieth of the travel", () => {
    expect(between(200, 100, WHOLE)).toEqual({ from: 100, to: 200 });
    expect(between(299, 300, WHOLE)).toEqual({ from: 294, to: 300 });
    expect(between(-10, 310, WHOLE)).toBeNull();
  });

  it("goes along by a share of what is shown, as far as the ends", () => {
    expect(moved({ from: 100, to: 200 }, WHOLE, 0.5)).toEqual({ from: 150, to: 250 });
    expect(moved({ from: 100, to: 200 }, WHOLE, -2)).toEqual({ from: 0, to: 100 });
  });

  it("follows a place that is read off", () => {
    expect(showing({ from: 100, to: 200 }, WHOLE, 150)).toEqual({ from: 100, to: 200 });
    expect(showing({ from: 100, to: 200 }, WHOLE, 210)).toEqual({ from: 110, to: 210 });
    expect(showing({ from: 100, to: 200 }, WHOLE, 40)).toEqual({ from: 40, to: 140 });
  });

  it("never leaves the travel", () => {
    const place = fc.double({ min: 0, max: 300, noNaN: true });
    fc.assert(
      fc.property(
        place,
        place,
        fc.double({ min: 0.1, max: 10, noNaN: true }),
        place,
        (a, b, factor, about) => {
          const shown = between(a, b, WHOLE) ?? WHOLE;
          const next = zoomed(shown, WHOLE, factor, about) ?? WHOLE;
          for (const { from, to } of [shown, next, moved(next, WHOLE, 0.5), showing(next, WHOLE, about)]) {
            expect(from).toBeGreaterThanOrEqual(0);
            expect(to).toBeLessThanOrEqual(300 + 1e-9);
            expect(to - from).toBeGreaterThan(5.999);
          }
        },
      ),
    );
  });
});

it("the picture of a part of the travel has an axis and marks of its own", () => {
  const struck = [
    { position: 120, value: 0.4, from: [0] },
    { position: 280, value: 0.4, from: [1] },
  ];
  const part = partOf(profilePicture(exampleAssessment({ struck }), "mm"), { from: 100, to: 200 });
  expect([part.xAxis.from, part.xAxis.to]).toEqual([100, 200]);
  expect(part.xAxis.ticks.map(({ label }) => label)).toContain("150");
  expect(part.spots.map(({ name }) => name)).toEqual(["loosest spot"]);
  expect(new Set(part.readings.map(({ x }) => x))).toEqual(new Set([100, 125, 150, 175, 200]));
  expect(part.struck.map(({ x }) => x)).toEqual([120]);
  expect(part.wornZones).toMatchObject([{ from: 100, to: 145 }]);
});
