import { describe, expect, it } from "vitest";
import { stretch } from "./kinds/of/flanksApart.ts";
import { leastEngaged } from "./leastEngaged.ts";

const SLIDE = { travel: 300, engaged: 40 };
/** A thread of 340 mm in steps of 0.25 mm. */
const STEPS = 1360;
const none = () => 0;

function along(flanks: readonly ((place: number) => number)[], elsewhere = 0) {
  return leastEngaged(flanks, SLIDE, elsewhere, STEPS);
}

/** A level stretch with upright edges. */
function block(from: number, to: number, depth: number) {
  return (place: number) => (place >= from && place <= to ? depth : 0);
}

describe("what a stiff nut meets", () => {
  it("is nothing but clearance and end float on an unworn screw", () => {
    const met = along([none, none], 0.07);
    expect([met.least, met.greatest, met.at(123.4)]).toEqual([0.07, 0.07, 0.07]);
  });

  it("is a plateau shorter by the nut's length", () => {
    const met = along([block(100, 200, 0.2), none], 0.05);
    expect(met.at(119)).toBeCloseTo(0.05, 9);
    expect(met.at(120)).toBeCloseTo(0.25, 9);
    expect(met.at(180)).toBeCloseTo(0.25, 9);
    expect(met.at(181)).toBeCloseTo(0.05, 9);
  });

  it("is nothing of a plateau shorter than the nut", () => {
    expect(along([block(100, 139, 0.2), none]).greatest).toBe(0);
  });

  it("is a ramp later by half the nut", () => {
    const slope = 0.001;
    const met = along([(place) => slope * (place + 20), none]);
    for (const position of [0, 17.3, 150, 300]) expect(met.at(position)).toBeCloseTo(slope * position, 9);
  });

  it("is a trough wider by the nut's length", () => {
    const met = along([(place) => 0.001 * Math.abs(place - 150), none]);
    for (const position of [0, 100, 129, 131, 150, 169, 171, 250]) {
      expect(met.at(position)).toBeCloseTo(0.001 * Math.max(0, Math.abs(position - 150) - 20), 9);
    }
  });

  it("is the hump of a roof, lower by what half the nut falls away", () => {
    const met = along([(place) => 0.2 - 0.001 * Math.abs(place - 150), none]);
    expect(met.greatest).toBeCloseTo(0.18, 9);
    expect(met.at(110)).toBeCloseTo(0.2 - 0.001 * 60, 9);
  });

  it("is the sum of what each flank lets through by itself, where they have worn in different places", () => {
    const met = along([block(20, 120, 0.2), block(150, 280, 0.1)], 0.03);
    expect(met.at(70)).toBeCloseTo(0.23, 9);
    expect(met.at(215)).toBeCloseTo(0.13, 9);
    expect(met.at(140)).toBeCloseTo(0.03, 9);
    expect(met.greatest - met.least).toBeCloseTo(0.2, 9);
  });

  it("can have a low place narrower than the nut where the flanks have worn on either side of it", () => {
    const met = along([block(0, 150, 0.2), block(90, 280, 0.1)], 0.03);
    // Flank 1 lets go at 130, flank 2 takes over at 110: in between both do.
    expect(met.at(115)).toBeCloseTo(0.33, 9);
    expect(met.at(140)).toBeCloseTo(0.13, 9);
  });

  it("tells where it is least", () => {
    const met = along([(place) => 0.001 * Math.abs(place - 210), (place) => 0.001 * Math.abs(place - 210)]);
    expect(Math.abs(met.leastAt - 210)).toBeLessThanOrEqual(20);
    expect(met.least).toBeCloseTo(0, 9);
  });
});

describe("a worn stretch", () => {
  it("is level between its edges, and half as deep half-way up them", () => {
    const worn = stretch(50, 150, 0.1, [10, 20]);
    expect([worn(49), worn(55), worn(60), worn(130), worn(140), worn(151)]).toEqual([
      0, 0.05, 0.1, 0.1, 0.05, 0,
    ]);
  });
});
