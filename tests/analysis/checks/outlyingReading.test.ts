import { describe, expect, it } from "vitest";
import { outlyingReading } from "../../../src/analysis/checks/outlyingReading.ts";
import reference from "../../reference/scatter.json";
import { CLEAN, found, surveyed } from "./checkInput.ts";

const third = (value: number) =>
  found(outlyingReading, [
    [0, 0.2],
    [50, 0.2],
    [50, 0.2],
    [50, value],
    [100, 0.2],
  ]);

describe("an outlying reading", () => {
  it("is warned of, with what its repeats say", () => {
    expect(third(0.25)).toEqual([
      {
        check: "outlying reading",
        severity: "warning",
        message:
          "Reading 4 at 50 mm is 0.25 mm where its repeats say 0.20 mm. Read this station again; strike, with the reason, what was a mistake.",
        readings: [3],
      },
    ]);
  });

  it("lies further than scatter explains in one of five hundred clean surveys", () => {
    for (const side of [1, -1]) {
      expect(third(0.2 + side * 0.99 * reference.thirdOfThree)).toEqual([]);
      expect(third(0.2 + side * 1.01 * reference.thirdOfThree)).toHaveLength(1);
    }
  });

  it("is both of two that do not agree, since neither can be told from the other", () => {
    const findings = found(outlyingReading, [
      [50, 0.2],
      [50, 0.3],
      [0, 0.2],
      [0, 0.2],
    ]);
    expect(findings.map(({ readings }) => readings)).toEqual([[0, 1]]);
    expect(findings[0].message).toContain("Readings 1 and 2 at 50 mm do not agree: 0.20 mm and 0.30 mm.");
  });

  it("is, where a station was read once, one far below those to either side, not a high one, which may be wear", () => {
    const lone = (value: number) =>
      found(
        outlyingReading,
        [0.2, 0.21, value, 0.2, 0.21].map((each, i) => [50 * i, each] as const),
      );
    expect(lone(0.1).map(({ readings, message }) => [readings, message])).toEqual([
      [[2], expect.stringContaining("Reading 3 at 100 mm is 0.10 mm where the other stations say 0.2")],
    ]);
    expect(lone(0.3)).toEqual([]);
  });

  it("is not told again of a reading that slipped, nor of its repeat", () => {
    const [twice] = [
      [
        [50, 0.2],
        [50, 2],
        [0, 0.2],
        [100, 0.2],
      ] as const,
    ];
    expect(found(outlyingReading, twice)).toEqual([]);
  });

  it("is none in a clean survey", () => {
    expect(outlyingReading(surveyed(CLEAN))).toEqual([]);
  });
});
