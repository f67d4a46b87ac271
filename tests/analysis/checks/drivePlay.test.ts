import { describe, expect, it } from "vitest";
import { drivePlay } from "../../../src/analysis/checks/drivePlay.ts";
import { surveyOf } from "../examples.ts";
import { CLEAN, scattering, surveyed } from "./surveyed.ts";

const pairs = (play: number) =>
  drivePlay(
    surveyed(
      surveyOf({
        method: "indicator-pair",
        indicator: { resolution: 0.01 },
        drivePlay: play,
        readings: [
          { position: 0, advancing: 0.3, retracting: 0.1 },
          { position: 50, advancing: 0.3, retracting: 0.2 },
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

  it("is said to be left out of account where readings do not carry it", () => {
    const [finding] = drivePlay(surveyed({ ...CLEAN, drivePlay: 0.02 }));
    expect(finding.severity).toBe("note");
    expect(finding.message).toContain("not part of push–pull readings");
  });

  it("is nothing where none was stated", () => {
    expect(drivePlay(surveyed(CLEAN))).toEqual([]);
  });
});
