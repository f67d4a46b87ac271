import { describe, expect, it } from "vitest";
import { noRepeats } from "../../../src/analysis/checks/noRepeats.ts";
import { CLEAN, found, surveyed } from "./checkInput.ts";

describe("no repeats", () => {
  it("are warned of", () => {
    expect(
      found(noRepeats, [
        [0, 0.2],
        [50, 0.21],
      ]),
    ).toEqual([
      {
        check: "no repeats",
        severity: "warning",
        message:
          "No station was read twice, so how well readings repeat is guessed from the indicator. Read every station, or at least three, again on the way back.",
        readings: [0, 1],
      },
    ]);
  });

  it("are not missed where one station was read twice", () => {
    expect(
      found(noRepeats, [
        [0, 0.2],
        [50, 0.21],
        [0, 0.2],
      ]),
    ).toEqual([]);
    expect(noRepeats(surveyed(CLEAN))).toEqual([]);
  });
});
