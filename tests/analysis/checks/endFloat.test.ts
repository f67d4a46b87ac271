import { describe, expect, it } from "vitest";
import { endFloat } from "../../../src/analysis/checks/endFloat.ts";
import reference from "../../reference/scatter.json";
import { pushPull } from "../examples.ts";
import { CLEAN, surveyed } from "./checkInput.ts";

/** The least lost motion is 0.05 mm, at the second station. */
const measured = (...values: readonly number[]) =>
  endFloat(
    surveyed(
      pushPull(
        [
          [0, 0.2],
          [50, 0.05],
          [100, 0.2],
          [50, 0.05],
        ],
        { endFloat: values },
      ),
    ),
  );

describe("end float", () => {
  it("is noted where it was not measured", () => {
    const note = [
      {
        check: "end float not measured",
        severity: "note",
        message:
          "End float was not measured, so the nut and the thrust bearing cannot be told apart. Put the indicator on the end of the screw and drive the slide a little each way.",
        readings: [],
      },
    ];
    expect(endFloat(surveyed(pushPull([[0, 0.2]])))).toEqual(note);
    expect(measured()).toEqual(note);
  });

  it("stops the verdict where it is larger than the lost motion it is part of", () => {
    expect(measured(0.1, 0.12)).toEqual([
      {
        check: "end float larger than lost motion",
        severity: "stop",
        message:
          "End float of 0.11 mm is more than the whole lost motion of 0.05 mm at 50 mm, of which it is a part. Measure the end float again, and that station.",
        readings: [1, 3],
      },
    ]);
  });

  it("may be larger by what scatter and rounding bring about in one of five hundred surveys", () => {
    const far = (share: number) => 0.05 + share * reference.endFloat;
    expect(measured(far(0.99), far(0.99))).toEqual([]);
    expect(measured(far(1.01), far(1.01))).toHaveLength(1);
  });

  it("is fine in a clean survey", () => {
    expect(endFloat(surveyed(CLEAN))).toEqual([]);
  });
});
