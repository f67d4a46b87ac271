import { describe, expect, it } from "vitest";
import { comparisonPicture } from "../../../src/picture/comparison/comparisonPicture.ts";
import { comparisonSvg } from "../../../src/picture/comparison/comparisonSvg.ts";
import { exampleComparison } from "../../report/comparison/exampleComparison.ts";

const picture = comparisonPicture(exampleComparison(), "mm");
const svg = comparisonSvg(picture);

describe("the picture of a comparison", () => {
  it("shows both profiles with their readings, and the difference from nothing on", () => {
    expect([picture.before.label, picture.after.label]).toEqual(["before", "after"]);
    expect(picture.before.readings).toHaveLength(26);
    expect(picture.after.points.at(-1)).toEqual({ x: 300, y: expect.closeTo(0.03, 6) });
    expect(picture.change.points[0]).toEqual({ x: 0, y: -0.08 });
    expect(picture.changeAxis.to).toBe(0);
    expect(picture.changeAxis.from).toBeLessThanOrEqual(-0.09);
  });

  it("says how much less there is all along, and no single amount where it differs", () => {
    expect(picture.change.label).toBe("0.08 mm less all along");
    const uneven = comparisonPicture(exampleComparison({ sameEverywhere: false }), "mm");
    expect(uneven.change.label).toBe("what has changed, with 95 % band");
  });

  it("shortens a survey's name that there is no room for, and no other", () => {
    const { from, to } = exampleComparison();
    const long = comparisonPicture(
      exampleComparison({ from: { ...from, id: "a".repeat(17) }, to: { ...to, id: "b".repeat(16) } }),
      "mm",
    );
    expect([long.before.label, long.after.label]).toEqual([`${"a".repeat(15)}…`, "b".repeat(16)]);
    expect(long.title).toBe("Lost motion, before and after: uniform part less by 0.08 mm");
  });

  it("is in the reader's unit throughout", () => {
    const inches = comparisonPicture(exampleComparison(), "in");
    expect(inches.limit.y * 25.4).toBeCloseTo(0.15, 12);
    expect(inches.xAxis.to * 25.4).toBeCloseTo(300, 6);
    expect((inches.change.points[0]?.y ?? 0) * 25.4).toBeCloseTo(-0.08, 12);
    expect(inches.description).toContain("The limit is 0.0059 in");
  });

  it("marks a working range that is narrower than the travel", () => {
    expect(picture.workingRange).toBe(null);
    const { to } = exampleComparison();
    const settings = { ...to.assessment.settings, workingRange: { from: 50, to: 200 } };
    const narrower = comparisonPicture(
      exampleComparison({ to: { ...to, assessment: { ...to.assessment, settings } } }),
      "mm",
    );
    expect(narrower.workingRange).toEqual({ from: 50, to: 200, label: "working range" });
    expect(comparisonSvg(narrower)).toContain(">working range</text>");
  });
});

describe("the comparison as SVG", () => {
  it("is one well-formed document that needs nothing else", () => {
    const open: string[] = [];
    for (const [, closing, name, alone] of svg.matchAll(/<(\/?)([a-z]+)[^>]*?(\/?)>/g)) {
      if (closing === "/") expect(open.pop()).toBe(name);
      else if (alone !== "/") open.push(name ?? "");
    }
    expect(open).toEqual([]);
    expect(svg).not.toMatch(/href=|<script|<style|NaN|Infinity|undefined/);
  });

  it("is named and described for screen readers", () => {
    expect(svg).toContain('role="img"');
    expect(svg).toContain("<title>Lost motion, before and after: uniform part less by 0.08 mm</title>");
    expect(svg).toMatch(/<desc>Lost motion along the travel in two surveys/);
  });

  it("names both surveys and the limit beside their lines, and dashes the earlier one", () => {
    for (const label of ["before", "after", "limit 0.15 mm", "0.08 mm less all along"]) {
      expect(svg).toContain(`>${label}</text>`);
    }
    expect(svg).toContain('stroke-dasharray="3 4"');
  });

  it("escapes what is not its own", () => {
    expect(comparisonSvg({ ...picture, title: 'a < b & "c"' })).toContain("a &lt; b &amp; &quot;c&quot;");
  });
});
