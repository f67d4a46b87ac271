import { describe, expect, it } from "vitest";
import { outlyingReading } from "../../../src/analysis/checks/outlyingReading.ts";
import { CLEAN, found, surveyed } from "./surveyed.ts";

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

  // Five times 0.004 mm, times √2, and a graduation of 0.01 mm: 0.03828 mm.
  it.each([
    [0.2382, 0],
    [0.2384, 1],
    [0.1618, 0],
    [0.1616, 1],
  ])("lies further than scatter and graduation explain: %f against 0.2", (value, count) => {
    expect(third(value)).toHaveLength(count);
  });

  it("is both of two that do not agree, since neither can be told from the other", () => {
    const findings = found(outlyingReading, [
      [50, 0.2],
      [50, 0.3],
    ]);
    expect(findings.map(({ readings }) => readings)).toEqual([[0, 1]]);
    expect(findings[0].message).toContain("Readings 1 and 2 at 50 mm do not agree: 0.20 mm and 0.30 mm.");
  });

  it("is not looked for where a station was read once", () => {
    expect(
      found(outlyingReading, [
        [0, 0.2],
        [50, 0.9],
        [100, 0.2],
      ]),
    ).toEqual([]);
  });

  it("is none in a clean survey", () => {
    expect(outlyingReading(surveyed(CLEAN))).toEqual([]);
  });
});
