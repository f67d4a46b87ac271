import { describe, expect, it } from "vitest";
import type { RunningIn } from "../../../src/analysis/runningIn/runningIn.ts";
import { lengthsIn } from "../../../src/inspection/lengths.ts";
import { runningInSummary, tooLittleWords } from "../../../src/report/comparison/runningIn.ts";
import { exampleRunningIn } from "./exampleComparison.ts";

const words = (changes: Partial<RunningIn> = {}): string =>
  runningInSummary(exampleRunningIn(changes), lengthsIn("mm", 0.01));

const { limitReached, chances } = exampleRunningIn();

describe("running in, in words", () => {
  it("says how much has grown, in what way, when the limit is reached and when to look again", () => {
    // 200 days from the first of January are the 20th of July; 300 the 28th of October.
    expect(words()).toBe(
      "Over 5 surveys since the last repair, from 2026-01-01 to 2026-07-20, the uniform part grew by 0.02 mm, " +
        "give or take 0.01. According to them, it grows at a steady rate (80 in 100). Where lost motion is greatest, " +
        "the limit of 0.15 mm may be reached from 2027-02-05 on, most likely about 2027-08-24, and by 2028-03-11 " +
        "at the latest. Survey again by 2026-10-28, when the chance that the limit is reached comes to 5 in 100.",
    );
  });

  it("does not claim growth or its course where the surveys do not show them", () => {
    expect(words({ growth: { value: 0.003, low: 0, high: 0.01 } })).toContain(
      "has not grown as far as the readings show, by 0.01 mm at most",
    );
    expect(words({ chances: { ...chances, steady: 0.5 } })).toContain(
      "They do not show yet how it goes on; most likely it grows at a steady rate (50 in 100)",
    );
  });

  it.each([
    [
      "reached already",
      { chanceAlready: 0.9 },
      "is reached already, where lost motion is greatest (90 in 100)",
    ],
    [
      "not in sight",
      { value: null, low: null, high: null },
      "is not expected to be reached before 2029-04-15",
    ],
    ["without an end", { high: null }, "and perhaps not before 2029-04-15"],
    [
      "without a middle",
      { value: null, high: null },
      "may be reached from 2027-02-05 on, and perhaps not before",
    ],
  ])("says of a limit that it is %s", (_, changes, expected) => {
    expect(words({ limitReached: { ...limitReached, ...changes } })).toContain(expected);
  });

  it("says that it may be reached already where the interval begins at the last survey", () => {
    const low = exampleRunningIn().surveys.at(-1)?.at ?? 0;
    expect(words({ limitReached: { ...limitReached, low, chanceAlready: 0.03 } })).toContain(
      "may be reached already (3 in 100), most likely about 2027-08-24",
    );
  });

  it("tells hours of use where the trend goes by them", () => {
    const found = words({ by: "hours", lookAgain: { at: 812.4, why: "watched" } });
    expect(found).toContain("Survey again by 812 h of use: the trend reaches no further ahead");
  });

  it("says why there is too little to tell", () => {
    expect(tooLittleWords({ surveys: 2, why: "surveys" })).toContain(
      "three surveys since the last repair; there are 2",
    );
    expect(tooLittleWords({ surveys: 1, why: "surveys" })).toContain("there is one");
    expect(tooLittleWords({ surveys: 4, why: "times" })).toContain("fewer than three different times");
  });
});
