import { describe, expect, it } from "vitest";
import { growingScatter } from "../../../src/analysis/checks/growingScatter.ts";
import { pushPull } from "../examples.ts";
import { CLEAN, surveyed } from "./checkInput.ts";

/**
 * Stations 40 mm apart whose three readings range over so many hundredths. The middle one is off, so that nothing
 * wanders with order: with a range r, their squares come to r² × 2/3.
 */
function ranging(...hundredths: readonly number[]) {
  const survey = pushPull(
    hundredths.flatMap((range, i): [number, number][] => [
      [40 * i, 0.2],
      [40 * i, 0.2 + 0.01 * range],
      [40 * i, 0.2],
    ]),
  );
  const seen = surveyed(survey);
  return growingScatter({ ...seen, clean: seen.stations });
}

describe("scatter that grows along the travel", () => {
  it("is warned of, with the end it grows towards", () => {
    expect(ranging(1, 1, 1, 3, 3, 6, 6, 6)).toEqual([
      {
        check: "scatter grows along the travel",
        severity: "warning",
        message:
          "Repeats agree less the nearer they are to 280 mm: a gib that is loose there, or worn ways. Set the gib and read again.",
        readings: Array.from({ length: 24 }, (_, i) => i),
      },
    ]);
    expect(ranging(6, 6, 6, 3, 3, 1, 1, 1)[0].message).toContain("nearer they are to 0 mm");
  });

  // Fisher's F of 6 and 6 degrees of freedom at 1 in 1000 for either end: 20.03, so that ranges are as 4.476 to 1.
  it("is not what chance explains in one of five hundred clean surveys", () => {
    expect(ranging(1, 1, 1, 9, 9, 4.46, 4.46, 4.46)).toEqual([]);
    expect(ranging(1, 1, 1, 9, 9, 4.49, 4.49, 4.49)).toHaveLength(1);
    expect(ranging(4.46, 4.46, 4.46, 0, 0, 1, 1, 1)).toEqual([]);
    expect(ranging(4.49, 4.49, 4.49, 0, 0, 1, 1, 1)).toHaveLength(1);
  });

  // Against r²/12 of one graduation: a third of the range squared over 0.01²/12 comes to 20.03 at 2.238 hundredths.
  it("is not thought to be less than rounding at the quiet end", () => {
    expect(ranging(0, 0, 0, 1, 1, 2.23, 2.23, 2.23)).toEqual([]);
    expect(ranging(0, 0, 0, 1, 1, 2.25, 2.25, 2.25)).toHaveLength(1);
  });

  it("is not asked of stations that were read once", () => {
    const once = pushPull([0, 0.05, 0.1, 0.3].map((value, i) => [50 * i, value] as const));
    expect(growingScatter(surveyed(once))).toEqual([]);
  });

  it("is none in a clean survey", () => {
    expect(growingScatter(surveyed(CLEAN))).toEqual([]);
  });
});
