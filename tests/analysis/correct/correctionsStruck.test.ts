import { describe, expect, it } from "vitest";
import { struckReadings } from "../../../src/analysis/correct/corrections.ts";
import { surveyOf } from "../examples.ts";

describe("struck readings", () => {
  it("come to lost motion as the others do, and none of the others is among them", () => {
    const survey = surveyOf({
      method: "indicator-pair",
      readings: [
        { position: 0, advancing: 0, retracting: 0.2 },
        { position: 50, advancing: 0, retracting: 0.21 },
        { position: 90, advancing: 0.1, retracting: 0.45, excluded: "bumped the stand" },
      ],
    });
    // All pairs have the indicator's sign turned: the struck one, too.
    expect(struckReadings(survey, 4)).toEqual([
      expect.objectContaining({ position: 90, value: 0.35, from: [2] }),
    ]);
  });

  it("are none where none was struck", () => {
    const survey = surveyOf({ method: "push-pull", readings: [{ position: 0, backlash: 0.2 }] });
    expect(struckReadings(survey, 4)).toEqual([]);
  });

  it("strike the pair of positions that one of them belongs to", () => {
    const survey = surveyOf({
      method: "positioning",
      readings: [
        { target: 50, direction: "advancing", reading: 50.2, run: 1 },
        { target: 50, direction: "retracting", reading: 50, run: 1, excluded: "" },
        { target: 80, direction: "advancing", reading: 80.1, run: 1 },
        { target: 80, direction: "retracting", reading: 80, run: 1 },
      ],
    });
    expect(struckReadings(survey, 4).map(({ from }) => from)).toEqual([[0, 1]]);
  });
});
