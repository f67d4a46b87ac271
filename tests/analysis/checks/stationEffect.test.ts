import { describe, expect, it } from "vitest";
import { stationEffect } from "../../../src/analysis/checks/stationEffect.ts";
import { CLEAN, surveyed } from "./surveyed.ts";

const at = (chance: number) =>
  stationEffect(surveyed(CLEAN, { stationEffect: { chance, deviation: 0.009 } }));

describe("stations that differ by more than their repeats", () => {
  it("are warned of, with the lead that a wobble would follow", () => {
    const [finding] = at(0.98);
    expect(finding.severity).toBe("warning");
    expect(finding.message).toContain("by about 0.02 mm");
    expect(finding.message).toContain("a lead of 4 mm");
  });

  it("are not told of below a chance of 0.98", () => {
    expect(at(0.979)).toEqual([]);
  });
});
