import { describe, expect, it } from "vitest";
import { drivePlay } from "../../../src/analysis/checks/drivePlay.ts";
import { surveyOf } from "../examples.ts";
import { CLEAN, scattering, surveyed } from "./checkInput.ts";

const pairs = (play: number, repeats = 1) =>
  drivePlay(
    surveyed(
      surveyOf({
        method: "indicator-pair",
        indicator: { resolution: 0.01 },
        drivePlay: play,
        readings: [
          { position: 0, advancing: 0.3, retracting: 0.1 },
          ...Array(repeats).fill({ position: 50, advancing: 0.3, retracting: 0.2 }),
        ],
      }),
      { scatter: scattering(0.006) },
    ),
  );

describe("drive play", () => {
  it("stops the verdict where it is larger than the lost motion it is part of", () => {
    expect(pairs(0.5)).toEqual([
      {
        check: "drive play larger than lost motion",
        severity: "stop",
        message:
          "Drive play of 0.50 mm is more than the whole lost motion of 0.10 mm at 50 mm, of which it is a part. Measure both again.",
        readings: [1],
      },
    ]);
  });

  // One chance in 500 for two stations: 3.0902 × √(0.006² + 2 × 0.01²/12) = 0.0224 mm above 0.1 mm.
  it("may be larger by scatter and rounding", () => {
    expect(pairs(0.1223)).toEqual([]);
    expect(pairs(0.1226)).toHaveLength(1);
  });

  // The same with a mean of four: 3.0902 × √(0.006²/4 + 2 × 0.01²/12) = 0.01566 mm.
  it("may be larger by less where the station was read again", () => {
    expect(pairs(0.1155, 4)).toEqual([]);
    expect(pairs(0.1158, 4)).toHaveLength(1);
  });

  it("is not held against lost motion below nothing, which is told by itself", () => {
    const right = [0, 50].map((position) => ({ position, advancing: 0.3, retracting: 0.2 }));
    const readings = [...right, { position: 100, advancing: 0.2, retracting: 0.3 }];
    const below = surveyed(surveyOf({ method: "indicator-pair", drivePlay: 0.02, readings }));
    expect(drivePlay({ ...below, clean: below.stations.filter(({ mean }) => mean < 0) })).toEqual([]);
  });

  it("is said to be left out of account where readings do not carry it", () => {
    const [finding] = drivePlay(surveyed({ ...CLEAN, drivePlay: 0.02 }));
    expect(finding.severity).toBe("note");
    expect(finding.message).toContain("0.02 mm is not part of push–pull readings");
  });

  it("is nothing where none was stated", () => {
    expect(drivePlay(surveyed(CLEAN))).toEqual([]);
  });
});
