import { describe, expect, it } from "vitest";
import { screwPicture } from "../../../src/picture/screw/screwPicture.ts";
import { screwSvg } from "../../../src/picture/screw/screwSvg.ts";
import { type ThreadOutline, threadOutlines } from "../../../src/picture/screw/screwThread.ts";
import { EVEN, exampleAssessment } from "../../report/exampleAssessment.ts";
import { exampleInspection } from "../../report/exampleInspection.ts";

const worn = exampleAssessment();
const { slide } = exampleInspection();

/** A frame in which a millimetre along the screw is a pixel. */
const FRAME = {
  left: -15,
  right: 315,
  crestTop: 0,
  crestBottom: 60,
  depth: 8,
  x: (position: number): number => position,
};

const outlinesOf = (changes: Partial<typeof slide> = {}) =>
  threadOutlines(screwPicture(worn, { ...slide, ...changes }), FRAME);

const crestWidth = ({ crest }: ThreadOutline): number => (crest[1]?.x ?? 0) - (crest[0]?.x ?? 0);
const at = ({ crest }: ThreadOutline): number => ((crest[0]?.x ?? 0) + (crest[1]?.x ?? 0)) / 2;
const lean = ({ crest }: ThreadOutline): number => (crest[3]?.x ?? 0) - (crest[0]?.x ?? 0);

describe("the picture of the screw", () => {
  it("shows all of the screw that the nut meets, with the travel on its axis", () => {
    const picture = screwPicture(worn, slide);
    expect([picture.axis.from, picture.axis.to]).toEqual([-15, 315]);
    expect(picture.travel).toEqual({ from: 0, to: 300 });
  });

  it("exaggerates wear by a round factor that leaves part of the thread to be seen, and says by how much", () => {
    // A thread of 4 mm pitch is 2 mm thick; 0.15 mm of wear ten times as large would leave only a quarter of it.
    const picture = screwPicture(worn, slide);
    expect(picture.exaggeration).toBe(5);
    expect(picture.title).toContain("5 times as large");
    expect(picture.description).toContain(
      "Wear is drawn 5 times as large as it is, half of it on either flank",
    );
  });

  it("draws wear to scale where it is so deep that it needs no exaggeration", () => {
    const deep = exampleAssessment({
      wornZones: exampleAssessment().wornZones.map((zone) => ({ ...zone, atLeast: 0.9 })),
    });
    const picture = screwPicture(deep, slide);
    expect(picture.exaggeration).toBe(1);
    expect(picture.title).toContain("wear to scale");
  });

  it("says where the screw has worn, by how much, and where the nut is drawn", () => {
    const { description, nut } = screwPicture(worn, slide, 200);
    expect(description).toContain(
      "Worn by at least 0.15 mm, both flanks together, from about 75 mm to 145 mm.",
    );
    expect(description).toContain("The nut, 30 mm long, is drawn at about 200 mm.");
    expect(nut).toMatchObject({ from: 185, to: 215 });
    expect(screwPicture(worn, slide).nut).toBeNull();
  });

  it("says why no worn place is shown", () => {
    const even = exampleAssessment(EVEN);
    expect(screwPicture(even, slide).description).toContain("show no wear of the screw");
    expect(screwPicture(even, slide).spots).toEqual([]);
    const halves = screwPicture(exampleAssessment({ wornZones: [] }), {
      ...slide,
      nut: { kind: "two-halves" },
    });
    expect(halves.description).toContain("cannot be told place by place");
  });

  it("is the same in inches", () => {
    const picture = screwPicture(worn, { ...slide, units: "in", screw: { lead: 4 / 25.4 } }, 200);
    const millimetres = screwPicture(worn, slide, 200);
    expect(picture.axis.to * 25.4).toBeCloseTo(millimetres.axis.to, 6);
    expect(picture.thread.pitch * 25.4).toBeCloseTo(4, 9);
    expect(picture.exaggeration).toBe(millimetres.exaggeration);
  });
});

describe("the threads drawn", () => {
  it("stand a pitch apart, all along the screw", () => {
    const places = outlinesOf().map(at);
    places.slice(1).forEach((place, index) => {
      expect(place - (places[index] ?? 0)).toBeCloseTo(4, 9);
    });
    expect(Math.min(...places)).toBeLessThanOrEqual(-15);
    expect(Math.max(...places)).toBeGreaterThanOrEqual(315);
  });

  it("are thinner by the exaggerated wear in the worn stretch, and there only", () => {
    // Half a pitch less one flank of 15° over half a pitch of depth: 2 − 2 tan 15°.
    const whole = 2 - 2 * Math.tan(Math.PI / 12);
    for (const thread of outlinesOf()) {
      const isWorn = at(thread) >= 75 && at(thread) <= 145;
      expect(crestWidth(thread)).toBeCloseTo(isWorn ? whole - 5 * 0.15 : whole, 2);
    }
  });

  it("lean as the hand of the screw has it, by half a lead", () => {
    expect(lean(outlinesOf()[3] as ThreadOutline)).toBeCloseTo(2, 9);
    expect(lean(outlinesOf({ screw: { lead: 4, hand: "left" } })[3] as ThreadOutline)).toBeCloseTo(-2, 9);
    const twoStarts = outlinesOf({ screw: { lead: 8, starts: 2 } });
    expect(lean(twoStarts[3] as ThreadOutline)).toBeCloseTo(4, 9);
  });

  it("stand for several each where there are too many to draw", () => {
    const fine = screwPicture(worn, { ...slide, screw: { lead: 1 } });
    expect(fine.thread.standsFor).toBe(3);
    expect(fine.description).toContain("Each thread drawn stands for 3.");
  });
});

describe("the screw as SVG", () => {
  const svg = screwSvg(screwPicture(worn, slide, 300));

  it("is one well-formed document that needs nothing else", () => {
    const open: string[] = [];
    for (const [, closing, name, alone] of svg.matchAll(/<(\/?)([a-zA-Z]+)[^>]*?(\/?)>/g)) {
      if (closing === "/") expect(open.pop()).toBe(name);
      else if (alone !== "/") open.push(name ?? "");
    }
    expect(open).toEqual([]);
    expect(svg).not.toMatch(/href=|<script|<style|NaN|Infinity|undefined/);
  });

  it("is named, described and lettered", () => {
    expect(svg).toContain('role="img"');
    expect(svg).toMatch(/<desc>The screw from the side/);
    for (const label of ["worn by at least 0.15 mm", "tight spot, 300 mm", "nut at 300 mm, 30 mm engaged"])
      expect(svg).toContain(`>${label}</text>`);
  });
});
