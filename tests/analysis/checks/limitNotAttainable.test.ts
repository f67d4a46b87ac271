import { describe, expect, it } from "vitest";
import { limitNotAttainable } from "../../../src/analysis/checks/limitNotAttainable.ts";
import { SETTINGS } from "../examples.ts";
import { CLEAN, surveyed } from "./checkInput.ts";

const limit = (millimetres: number) =>
  limitNotAttainable(surveyed(CLEAN, { settings: { ...SETTINGS, limit: millimetres } }));

describe("a limit that is not attainable", () => {
  it("stops the verdict", () => {
    expect(limit(0.02)).toEqual([
      {
        check: "limit not attainable",
        severity: "stop",
        message:
          "The limit of 0.02 mm is less than running clearance and end float come to in parts in perfect order (0.04 mm). Choose a greater limit.",
        readings: [],
      },
    ]);
  });

  it("is less than running clearance and attainable end float together: 0.035 mm", () => {
    expect(limit(0.0349)).toHaveLength(1);
    expect(limit(0.035)).toEqual([]);
  });
});
