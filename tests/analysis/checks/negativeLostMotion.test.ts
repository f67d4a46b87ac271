import { describe, expect, it } from "vitest";
import { negativeLostMotion } from "../../../src/analysis/checks/negativeLostMotion.ts";
import { surveyOf } from "../examples.ts";
import { CLEAN, found, scattering, surveyed } from "./checkInput.ts";

describe("negative lost motion", () => {
  it("is warned of, reading by reading, with both rows of a pair of runs", () => {
    const survey = surveyOf({
      method: "positioning",
      indicator: { resolution: 0.01 },
      readings: [
        { target: 0, direction: "advancing", reading: 0.2, run: 1 },
        { target: 0, direction: "retracting", reading: 0, run: 1 },
        { target: 50, direction: "advancing", reading: 50.2, run: 1 },
        { target: 50, direction: "retracting", reading: 50, run: 1 },
        { target: 100, direction: "advancing", reading: 99.96, run: 1 },
        { target: 100, direction: "retracting", reading: 100, run: 1 },
      ],
    });
    expect(negativeLostMotion(surveyed(survey))).toEqual([
      {
        check: "negative lost motion",
        severity: "warning",
        message:
          "Reading 5 at 100 mm comes out as -0.04 mm, which is negative: advancing and retracting were swapped, or an approach was shorter than the lost motion. Take it again.",
        readings: [4, 5],
      },
    ]);
  });

  it("is told once for several", () => {
    const findings = found(negativeLostMotion, [
      [0, -0.1],
      [50, 0.2],
      [100, -0.2],
      [150, 0.2],
    ]);
    expect(findings).toEqual([
      {
        check: "negative lost motion",
        severity: "warning",
        message:
          "2 readings come out negative (0 mm, 100 mm): advancing and retracting were swapped, or an approach was shorter than the lost motion. Take them again.",
        readings: [0, 2],
      },
    ]);
  });

  it("stops the verdict where most readings have it: the signs are reversed", () => {
    const [finding] = found(negativeLostMotion, [
      [0, -0.1],
      [50, 0.2],
      [100, -0.2],
    ]);
    expect(finding.severity).toBe("stop");
    expect(finding.message).toContain("the signs look reversed");
  });

  // One chance in 500 of a normal error: 2.8782 × 0.005 mm; for four readings 3.2905 × 0.005 mm.
  it("is not what scatter about nothing explains", () => {
    const part = { scatter: scattering(0.005) };
    const of = (...values: readonly number[]) =>
      found(
        negativeLostMotion,
        values.map((value, i) => [50 * i, value] as const),
        part,
      );
    expect(of(-0.0143)).toEqual([]);
    expect(of(-0.0145)).toHaveLength(1);
    expect(of(0.2, 0.2, 0.2, -0.0164)).toEqual([]);
    expect(of(0.2, 0.2, 0.2, -0.0165)).toHaveLength(1);
  });

  it("is none in a clean survey", () => {
    expect(negativeLostMotion(surveyed(CLEAN))).toEqual([]);
  });
});
