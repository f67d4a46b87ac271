import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dateOfDay, dayNumber } from "../../src/inspection/dates.ts";

describe("dates as days", () => {
  it("count from the first of January 1970", () => {
    expect(dayNumber("1970-01-01")).toBe(0);
    expect(dayNumber("1970-03-01")).toBe(59);
    // 30 years of 365 days and 7 leap days.
    expect(dayNumber("2000-01-01")).toBe(10957);
  });

  it("hold the time as a share of the day, taken for UTC where it has no zone", () => {
    expect(dayNumber("1970-01-02T06:00")).toBe(1.25);
    expect(dayNumber("1970-01-02T06:00:00Z")).toBe(1.25);
    expect(dayNumber("1970-01-02T08:00+02:00")).toBe(1.25);
  });

  it("come back as they were", () => {
    fc.assert(
      fc.property(fc.integer({ min: -30_000, max: 60_000 }), (day) => dayNumber(dateOfDay(day)) === day),
    );
  });
});
