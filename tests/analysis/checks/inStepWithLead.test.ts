import { describe, expect, it } from "vitest";
import { inStepWithLead } from "../../../src/analysis/checks/inStepWithLead.ts";
import { CLEAN, found, surveyed } from "./surveyed.ts";

const at = (...positions: readonly number[]) =>
  found(
    inStepWithLead,
    positions.map((position) => [position, 0.2]),
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

  it("are within a twenty-fifth of a turn, 0.16 mm, either way", () => {
    expect(at(0, 40.159, 79.841)).toHaveLength(1);
    expect(at(0, 40.161, 80)).toEqual([]);
    expect(at(0, 40, 79.839)).toEqual([]);
  });

  it("are not two, which are always in step to some lead", () => {
    expect(at(0, 40)).toEqual([]);
  });

  it("are none in a clean survey", () => {
    expect(inStepWithLead(surveyed(CLEAN))).toEqual([]);
  });
});
