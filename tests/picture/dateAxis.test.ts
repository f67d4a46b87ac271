import { describe, expect, it } from "vitest";
import { dayNumber } from "../../src/inspection/dates.ts";
import { dateAxis } from "../../src/picture/dateAxis.ts";

const ticks = (from: string, to: string) =>
  dateAxis("Date", dayNumber(from), dayNumber(to), 8).ticks.map(({ label }) => label);

describe("an axis of dates", () => {
  it.each([
    ["2026-02-26", "2026-03-04", ["26 Feb", "27 Feb", "28 Feb", "1 Mar", "2 Mar", "3 Mar", "4 Mar"]],
    ["2026-03-01", "2026-03-15", ["1 Mar", "3 Mar", "5 Mar", "7 Mar", "9 Mar", "11 Mar", "13 Mar", "15 Mar"]],
    ["2025-11-10", "2026-04-20", ["Dec 2025", "Jan 2026", "Feb 2026", "Mar 2026", "Apr 2026"]],
    [
      "2025-11-10",
      "2027-02-20",
      ["Jan 2026", "Mar 2026", "May 2026", "Jul 2026", "Sep 2026", "Nov 2026", "Jan 2027"],
    ],
    ["2024-06-01", "2030-06-01", ["2025", "2026", "2027", "2028", "2029", "2030"]],
  ])("from %s to %s has ticks at %j", (from, to, expected) => {
    expect(ticks(from, to)).toEqual(expected);
  });

  it("has its ticks where the days begin, and ends where it is told to", () => {
    const [from, to] = [dayNumber("2026-03-01T15:30"), dayNumber("2026-03-05T09:00")];
    const axis = dateAxis("Date", from, to, 8);
    expect([axis.from, axis.to]).toEqual([from, to]);
    expect(axis.ticks[0]).toEqual({ at: dayNumber("2026-03-02"), label: "2 Mar" });
    expect(axis.ticks.at(-1)?.label).toBe("5 Mar");
  });
});
