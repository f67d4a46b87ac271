import { describe, expect, it } from "vitest";
import { inStepWithLead } from "../../../src/analysis/checks/inStepWithLead.ts";
import { CLEAN, found, scattering, surveyed } from "./checkInput.ts";

const at = (...positions: readonly number[]) =>
  found(
    inStepWithLead,
    positions.map((position) => [position, 0.2]),
    { scatter: scattering(0.006) },
  );

describe("stations in step with the lead", () => {
  it("are noted where all are whole turns of the screw apart, wherever the first is", () => {
    expect(at(1, 9, 41)).toEqual([
      {
        check: "in step with the lead",
        severity: "note",
        message:
          "All stations are whole turns of the screw apart (lead 4 mm), so a bent screw or an eccentric journal would not show. Read two or three stations a quarter and half a turn away.",
        readings: [0, 1, 2],
      },
    ]);
  });

  // A wobble of 0.15 − 0.025 − 0.01 mm, hidden by 3.0902 × √(2 × 0.006² + 2 × 0.01²/12) = 0.0291 mm, over 0.0814 turns.
  it("are within the arc over which scatter may hide a wobble that matters: 0.326 mm", () => {
    expect(at(0, 40.16, 79.835)).toHaveLength(1);
    expect(at(0, 40.16, 79.833)).toEqual([]);
    expect(at(0.325, 40, 80)).toHaveLength(1);
    expect(at(0.327, 40, 80)).toEqual([]);
  });

  it("are exactly one angle where scatter would hide any wobble", () => {
    const coarse = (...positions: readonly number[]) =>
      found(
        inStepWithLead,
        positions.map((position) => [position, 0.2]),
        { scatter: scattering(0.1) },
      );
    expect(coarse(0, 40, 80.0009)).toHaveLength(1);
    expect(coarse(0, 40, 80.0011)).toEqual([]);
  });

  it("are not two, which are always in step to some lead", () => {
    expect(at(0, 40)).toEqual([]);
  });

  it("are none in a clean survey", () => {
    expect(inStepWithLead(surveyed(CLEAN))).toEqual([]);
  });
});
