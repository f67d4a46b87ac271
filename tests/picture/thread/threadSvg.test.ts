import { describe, expect, it } from "vitest";
import { textWidth } from "../../../src/picture/profileLabels.ts";
import { threadFrame } from "../../../src/picture/thread/threadFrame.ts";
import { threadPicture } from "../../../src/picture/thread/threadPicture.ts";
import { threadSvg } from "../../../src/picture/thread/threadSvg.ts";
import { EVERY_FORM, saidBy } from "../../report/thread/said.ts";

const WIDTHS = [360, 960];

const pictureOf = (words: string) => {
  const { thread, units } = saidBy(words);
  return threadPicture(thread, units);
};

describe("the drawing of a thread", () => {
  it.each(EVERY_FORM)("is to one scale, with labels in their column and clear of each other: %s", (words) => {
    const picture = pictureOf(words);
    for (const width of WIDTHS) {
      const { x, y, labels, labelX, height, scale } = threadFrame(picture, width, 0);
      expect(x(picture.pitch) - x(0)).toBeCloseTo(scale * picture.pitch, 9);
      expect(y(0) - y(picture.pitch)).toBeCloseTo(scale * picture.pitch, 9);
      expect(labels).toHaveLength(picture.diameters.length + (picture.wire === null ? 0 : 1));
      labels.forEach((label, index) => {
        expect(labelX + textWidth(label.text)).toBeLessThanOrEqual(width);
        expect(label.y).toBeGreaterThan(0);
        expect(label.y).toBeLessThan(height);
        const above = labels[index - 1];
        if (above !== undefined) expect(label.y - above.y).toBeGreaterThanOrEqual(17.99);
      });
    }
  });

  it("has the wire touch both flanks of its groove", () => {
    const picture = pictureOf("--form trapezoidal-30 --diameter 24 --pitch 0.5");
    if (picture.wire === null) throw new Error("There is no wire.");
    const alpha = Math.PI / 12;
    // Distance from the wire's centre to the flank, a line through (P/4, E/2) at the flank's angle to the radius.
    const distance = Math.cos(alpha) * 0.125 + Math.sin(alpha) * (picture.wire.centre - picture.pitchRadius);
    expect(distance).toBeCloseTo(picture.wire.radius, 4);
  });

  it("writes every diameter, the wire and the tip in the reader's unit, and tells them to those who cannot see", () => {
    const svg = threadSvg(pictureOf("--form acme-29 --diameter 1 --per-inch 5 --class 2G"));
    for (const label of ["outside 1.0000", "pitch 0.8920", "core 0.7800", "bore 0.8000", "nut root 1.0200"])
      expect(svg.split(label).length).toBe(3);
    for (const label of ["wire 0.1033", "tip 0.0710", "pitch 0.2", "14.5°"]) expect(svg).toContain(label);
    expect(svg).toContain("<title>Screw and nut, 1-5 Acme, in inches</title>");
  });

  it("draws no wire in a square thread", () => {
    expect(threadSvg(pictureOf("--form square --diameter 24 --pitch 5"))).not.toContain("<circle");
  });
});
