import { describe, expect, it } from "vitest";
import { extremes, gridOf } from "../../../src/analysis/profile/draws.ts";
import { evenlySpaced } from "../examples.ts";
import { sweeps } from "./data.ts";

describe("the positions at which profiles are kept", () => {
  it("are a hundred even steps over the travel", () => {
    expect([...gridOf(sweeps([[0, 0.1]]))]).toEqual(evenlySpaced(0, 300, 101));
    const shifted = { travel: { from: -50, to: 50 }, workingRange: { from: -50, to: 50 } };
    expect([...gridOf(sweeps([[0, 0.1]], shifted))]).toEqual(evenlySpaced(-50, 50, 101));
  });

  it("include the stations and the ends of the working range, in order", () => {
    const data = sweeps(
      [
        [100, 0.1],
        [0.5, 0.1],
        [299.9, 0.1],
      ],
      { workingRange: { from: 40, to: 200.25 } },
    );
    const grid = [...gridOf(data)];
    expect(grid).toEqual([...grid].sort((a, b) => a - b));
    expect(grid).toHaveLength(101 + 5);
    for (const place of [0.5, 40, 100, 200.25, 299.9]) expect(grid).toContain(place);
  });

  it("leave out stations beyond the travel", () => {
    const grid = [
      ...gridOf(
        sweeps([
          [-1, 0.1],
          [0, 0.1],
          [300, 0.1],
          [301, 0.1],
        ]),
      ),
    ];
    expect(grid).toEqual(evenlySpaced(0, 300, 101));
  });

  it("hold places within a millionth of the travel once", () => {
    const grid = [...gridOf(sweeps([[10, 0.1]], { workingRange: { from: 10.0002, to: 300 } }))];
    expect(grid.filter((place) => Math.abs(place - 10) < 0.01)).toEqual([10]);
    const far = { travel: { from: 1000, to: 1300 }, workingRange: { from: 1010.0004, to: 1300 } };
    expect([...gridOf(sweeps([[1010, 0.1]], far))].filter((place) => Math.abs(place - 1010) < 0.01)).toEqual([
      1010, 1010.0004,
    ]);
    const apart = [...gridOf(sweeps([[10, 0.1]], { workingRange: { from: 10.0004, to: 300 } }))];
    expect(apart.filter((place) => Math.abs(place - 10) < 0.01)).toEqual([10, 10.0004]);
  });
});

describe("the tight and the loosest spot", () => {
  const positions = Float64Array.of(0, 10, 20, 30, 40);
  const backlash = Float64Array.of(0.3, 0.1, 0.2, 0.25, 0.05);

  it("are the least of the travel and the greatest of the working range", () => {
    expect(extremes(positions, backlash, { from: 0, to: 40 })).toEqual({
      tight: { position: 40, backlash: 0.05 },
      loose: { position: 0, backlash: 0.3 },
    });
    expect(extremes(positions, backlash, { from: 10, to: 30 })).toEqual({
      tight: { position: 40, backlash: 0.05 },
      loose: { position: 30, backlash: 0.25 },
    });
  });

  it("are looked for at the very ends of the working range", () => {
    expect(extremes(positions, backlash, { from: 1, to: 29 }).loose).toEqual({ position: 20, backlash: 0.2 });
    expect(extremes(positions, backlash, { from: 10, to: 10 }).loose).toEqual({
      position: 10,
      backlash: 0.1,
    });
    expect(extremes(positions, backlash, { from: 40, to: 40 }).loose).toEqual({
      position: 40,
      backlash: 0.05,
    });
  });

  it("are the first of places that are alike", () => {
    const level = extremes(positions, new Float64Array(5).fill(0.2), { from: 10, to: 40 });
    expect(level.tight.position).toBe(0);
    expect(level.loose.position).toBe(10);
  });
});
