import { describe, expect, it } from "vitest";
import { growingScatter } from "../../../src/analysis/checks/growingScatter.ts";
import { CLEAN, found, surveyed } from "./surveyed.ts";

/** Stations 40 mm apart whose three readings range over so many hundredths. */
function ranging(...hundredths: readonly number[]) {
  return found(
    growingScatter,
    hundredths.flatMap((range, i): [number, number][] => {
      const least = 0.2 + 0.05 * ((3 * i) % 5);
      return [
        [40 * i, least],
        [40 * i, least + 0.01 * range],
        [40 * i, least + 0.005 * range],
      ];
    }),
  );
}

describe("scatter that grows along the travel", () => {
  it("is warned of, with the end it grows towards", () => {
    expect(ranging(0, 1, 2, 3, 4, 5, 6, 7)).toEqual([
      {
        check: "scatter grows along the travel",
        severity: "warning",
        message:
          "Repeats agree less the nearer they are to 280 mm: a gib that is loose there, or worn ways. Set the gib and read again.",
        readings: Array.from({ length: 24 }, (_, i) => i),
      },
    ]);
    expect(ranging(7, 6, 5, 4, 3, 2, 1, 0)[0].message).toContain("nearer they are to 0 mm");
  });

  it("is looked for in eight repeated stations or more", () => {
    expect(ranging(0, 1, 2, 3, 4, 5, 6)).toEqual([]);
  });

  it("is not asked of stations that were read once", () => {
    const readings = [0, 1, 2, 3, 4, 5, 6].flatMap((i): [number, number][] => [
      [40 * i, 0.2],
      [40 * i, 0.2 + 0.01 * i],
    ]);
    expect(found(growingScatter, [...readings, [280, 0.2]])).toEqual([]);
    expect(found(growingScatter, [...readings, [270, 0.2], [280, 0.2], [280, 0.27]])).toHaveLength(1);
  });

  it("is not what chance explains: 3.3 of Fisher's z", () => {
    // Correlations in numpy of 0.90139 and 0.90053: atanh r × √5 = 3.308 and 3.298.
    expect(ranging(0, 0, 2, 4, 6, 8, 9, 6)).toHaveLength(1);
    expect(ranging(0, 0, 4, 2, 6, 5, 9, 7)).toEqual([]);
  });

  it("is not a difference of one graduation", () => {
    expect(ranging(0, 0, 0, 0, 0.99, 0.99, 0.99, 0.99)).toEqual([]);
    expect(ranging(0, 0.2, 0.4, 0.6, 0.8, 1, 1.2, 1.4)).toHaveLength(1);
    expect(ranging(3, 3.1, 3.2, 3.3, 3.4, 3.5, 3.6, 3.7)).toEqual([]);
  });

  it("is none in a clean survey", () => {
    expect(growingScatter(surveyed(CLEAN))).toEqual([]);
  });
});
