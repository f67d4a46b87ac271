import { describe, expect, it } from "vitest";
import { seededRandom } from "../../src/analysis/statistics/random.ts";
import { HELD_OUT } from "./kinds/held-out/index.ts";
import { KINDS } from "./kinds/index.ts";
import { scaledTo } from "./kinds/kind.ts";
import { worked } from "./kinds/of/habitualStrokes.ts";
import { gaussianProcess } from "./kinds/of/smoothRandom.ts";
import { turned } from "./kinds/of/turnedEndForEnd.ts";

const SCREW = { travel: 300, engaged: 40, lead: 5 };

describe("sliding distance × load", () => {
  it("is a trapezium for one stroke longer than the nut", () => {
    const slid = worked([{ from: 100, to: 200, load: 3 }], 40);
    expect([79, 100, 120, 150, 180, 190, 220].map(slid)).toEqual([0, 1.5, 3, 3, 3, 2.25, 0]);
  });

  it("is a lower one for a stroke shorter than the nut, which slides over any thread for its own length only", () => {
    const slid = worked([{ from: 100, to: 110, load: 4 }], 40);
    expect([79, 85, 90, 105, 120, 125, 131].map(slid)).toEqual([0, 0.5, 1, 1, 1, 0.5, 0]);
  });

  it("adds up from stroke to stroke, and to load × length of all strokes over the thread", () => {
    const strokes = [
      { from: 20, to: 90, load: 1 },
      { from: 60, to: 75, load: 2 },
    ];
    const slid = worked(strokes, 40);
    let area = 0;
    for (let place = -50; place <= 200; place += 0.5) area += 0.5 * slid(place);
    expect(area).toBeCloseTo(1 * 70 + 2 * 15, 6);
  });
});

describe("a screw turned end for end", () => {
  it("has the wear mirrored, and on the other flank", () => {
    const [first, second] = turned([(place) => place / 1000, () => 0.2], 300);
    expect([first(10), second(0), second(300), second(10)]).toEqual([0.2, 0.3, 0, 0.29]);
  });

  it("is as it was when it is turned again", () => {
    const before = [(place: number) => place ** 2, (place: number) => 1 - place] as const;
    const after = turned(turned(before, 300), 300);
    for (const place of [-20, 0, 111, 320]) {
      expect(after.map((flank) => flank(place))).toEqual(before.map((flank) => flank(place)));
    }
  });
});

describe("a Gaussian process of waves", () => {
  const curves = Array.from({ length: 400 }, (_, i) => gaussianProcess(seededRandom(100 + 7919 * i), 25));
  const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;

  it("has no mean and unit variance", () => {
    const values = curves.flatMap((curve) => [curve(0), curve(200)]);
    expect(Math.abs(mean(values))).toBeLessThan(0.15);
    expect(mean(values.map((value) => value ** 2))).toBeGreaterThan(0.8);
    expect(mean(values.map((value) => value ** 2))).toBeLessThan(1.2);
  });

  it("has the covariance exp(−d² / 2l²)", () => {
    for (const apart of [10, 25, 50]) {
      const product = mean(curves.map((curve) => curve(60) * curve(60 + apart)));
      expect(Math.abs(product - Math.exp(-0.5 * (apart / 25) ** 2))).toBeLessThan(0.2);
    }
  });
});

describe("a scaled curve", () => {
  it("is greatest at the depth, over all thread that the nut reaches", () => {
    const ramp = scaledTo(0.2, (place) => place + 20, SCREW);
    expect(ramp(320)).toBeCloseTo(0.2, 9);
    expect(ramp(150)).toBeCloseTo(0.1, 9);
  });

  it("is nothing where the curve is nothing", () => {
    expect(scaledTo(0.2, () => 0, SCREW)(50)).toBe(0);
  });
});

describe.each([...KINDS, ...HELD_OUT])("$name", (kind) => {
  it("is the same for the same seed, another for another, and a depth that a screw may have", () => {
    const flanksOf = (seed: number) => {
      const flanks = kind.wear(seededRandom(seed), SCREW);
      return flanks.flatMap((flank) => Array.from({ length: 35 }, (_, i) => flank(10 * i - 20)));
    };
    const seen = new Set<string>();
    for (let seed = 1; seed <= 20; seed++) {
      const worn = flanksOf(seed * 7919);
      expect(flanksOf(seed * 7919)).toEqual(worn);
      expect(
        worn.every((depth) => depth >= (kind.name === "lead error and wear" ? -0.3 : 0) && depth < 1.2),
      ).toBe(true);
      seen.add(JSON.stringify(worn));
    }
    expect(seen.size).toBeGreaterThan(5);
  });
});
