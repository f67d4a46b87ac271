import { describe, expect, it } from "vitest";
import { dayNumber } from "../../../src/inspection/dates.ts";
import { runningInPicture } from "../../../src/picture/runningIn/runningInPicture.ts";
import { runningInSvg } from "../../../src/picture/runningIn/runningInSvg.ts";
import { exampleRunningIn } from "../../report/comparison/exampleComparison.ts";

const example = exampleRunningIn();
const picture = runningInPicture(example, "mm");
const start = dayNumber("2026-01-01");

describe("the picture of running in", () => {
  it("shows every survey with its interval, the trend with its band, and where watching ended", () => {
    expect(picture.surveys).toHaveLength(5);
    expect(picture.surveys[4]).toEqual({
      x: start + 200,
      y: expect.closeTo(0.07, 12),
      low: expect.closeTo(0.068, 12),
      high: expect.closeTo(0.072, 12),
    });
    expect(picture.trend.band[2]).toEqual({
      x: start + 400,
      low: expect.closeTo(0.08, 12),
      high: expect.closeTo(0.1, 12),
    });
    expect(picture.lastSurveyAt).toBe(start + 200);
    expect([picture.xAxis.from, picture.xAxis.to]).toEqual([start, start + 400]);
  });

  it("draws the limit less the uneven part, which is what the uniform part may grow to", () => {
    // 0.15 mm less 0.04 mm that the loosest spot is above the tight one.
    expect(picture.limit).toEqual({
      y: expect.closeTo(0.11, 12),
      label: "limit 0.15 mm, less the uneven 0.04 mm",
    });
    const even = { value: 0, low: 0, high: 0.002 };
    expect(runningInPicture({ ...example, uneven: even }, "mm").limit?.label).toBe("limit 0.15 mm");
    const worn = { value: 0.2, low: 0.19, high: 0.21 };
    expect(runningInPicture({ ...example, uneven: worn }, "mm").limit).toBe(null);
  });

  it("marks when the limit is reached as far as the picture goes", () => {
    expect(picture.reached).toEqual({ from: start + 400, likeliest: null, to: null });
    const { limitReached } = example;
    const soon = { ...limitReached, low: start + 250, value: start + 300, high: start + 390 };
    expect(runningInPicture({ ...example, limitReached: soon }, "mm").reached).toEqual({
      from: start + 250,
      likeliest: start + 300,
      to: start + 390,
    });
    const never = { ...limitReached, low: null, value: null, high: null };
    expect(runningInPicture({ ...example, limitReached: never }, "mm").reached).toBe(null);
    const later = { ...limitReached, low: start + 401 };
    expect(runningInPicture({ ...example, limitReached: later }, "mm").reached).toBe(null);
  });

  it("goes by dates or by hours of use, and says so", () => {
    expect(picture.xAxis.label).toBe("Date");
    expect(picture.xAxis.ticks.map(({ label }) => label)).toContain("Jul 2026");
    expect(picture.lookAgain).toEqual({ x: start + 300, label: "look again, 2026-10-28" });
    const hours = runningInPicture(
      {
        ...example,
        by: "hours",
        trend: example.trend.map((point, index) => ({ ...point, at: 250 * index })),
        lookAgain: { at: 375.4, why: "limit" },
      },
      "mm",
    );
    expect(hours.xAxis.label).toBe("Hours of use");
    expect(hours.xAxis.ticks.map(({ label }) => label)).toEqual(["0", "100", "200", "300", "400", "500"]);
    expect(hours.lookAgain.label).toBe("look again, 375 h");
  });

  it("is in the reader's unit throughout, times apart", () => {
    const inches = runningInPicture(example, "in");
    expect((inches.limit?.y ?? 0) * 25.4).toBeCloseTo(0.11, 12);
    expect((inches.surveys[4]?.y ?? 0) * 25.4).toBeCloseTo(0.07, 12);
    expect((inches.trend.points[2]?.y ?? 0) * 25.4).toBeCloseTo(0.09, 12);
    expect(inches.xAxis.to).toBe(start + 400);
  });

  it("tells in words what it shows", () => {
    expect(picture.title).toBe("Running in: the uniform part over 5 surveys, grown by 0.02 mm");
    expect(picture.description).toContain("2026-07-20: 0.07 mm");
    expect(picture.description).toContain("between 0.08 mm and 0.10 mm");
    const still = { value: 0.002, low: 0, high: 0.004 };
    expect(runningInPicture({ ...example, growth: still }, "mm").title).toContain("no growth shown");
  });
});

describe("running in as SVG", () => {
  it.each(["sheet", "wide", "narrow"] as const)(
    "is one well-formed document that needs nothing else: %s",
    (setting) => {
      const svg = runningInSvg(picture, setting);
      const open: string[] = [];
      for (const [, closing, name, alone] of svg.matchAll(/<(\/?)([a-z]+)[^>]*?(\/?)>/g)) {
        if (closing === "/") expect(open.pop()).toBe(name);
        else if (alone !== "/") open.push(name ?? "");
      }
      expect(open).toEqual([]);
      expect(svg).not.toMatch(/href=|<script|<style|NaN|Infinity|undefined/);
      expect(svg).toContain('role="img"');
      expect(svg).toContain(`<title>${picture.title}</title>`);
    },
  );

  it("draws the trend through as far as it was watched and dashed from there, and each survey as a ring", () => {
    const svg = runningInSvg(picture);
    const dashed = [...svg.matchAll(/<path d="(M[^"]*)"[^>]*stroke-dasharray="7 6"/g)];
    const [, begins = ""] = /^M([\d.]+) /.exec(dashed[0]?.[1] ?? "") ?? [];
    // Half way along a plot from 64 to 932.
    expect(Number(begins)).toBeCloseTo(498, 6);
    expect(svg.match(/<circle/g)).toHaveLength(5);
    for (const label of [
      "limit 0.15 mm, less the uneven 0.04 mm",
      "look again, 2026-10-28",
      "trend, with 95 % band",
    ])
      expect(svg).toContain(`>${label}</text>`);
  });

  it("draws the title only where no text beside it gives it", () => {
    expect(runningInSvg(picture).match(/>Running in: [^<]*<\/text>/g)).toHaveLength(1);
    expect(runningInSvg(picture, "wide")).not.toMatch(/>Running in: [^<]*<\/text>/);
  });
});
