import { describe, expect, it } from "vitest";
import { lengthsIn } from "../../../src/inspection/lengths.ts";
import { placeAt } from "../../../src/picture/screw/nutPlace.ts";
import { EVEN, exampleAssessment } from "../../report/exampleAssessment.ts";

const MM = lengthsIn("mm", 0.01);

/** The example rises from 0.11 mm by 0.2 mm in a bell about 110 mm; this is how far from 110 mm it has risen by so much. */
const halfWidthAt = (rise: number): number => 35 * Math.sqrt(-Math.log(rise / 0.2));

describe("a place along the travel", () => {
  it("has the lost motion of the profile there, with its band", () => {
    const { lostMotion } = placeAt(exampleAssessment(), 110, MM);
    expect(lostMotion.value).toBeCloseTo(0.31, 9);
    expect(lostMotion.low).toBeCloseTo(0.298, 9);
    expect(lostMotion.high).toBeCloseTo(0.322, 9);
  });

  it("gives the nut what end float leaves of it, and what taking up to the tight spot leaves of that", () => {
    const { asItIs, takenUp, left } = placeAt(exampleAssessment(), 110, MM);
    // 0.11 mm at the tight spot, of which 0.01 mm is end float; 0.2 mm more here. 0.025 mm of clearance is kept.
    expect(asItIs.uniform).toBeCloseTo(0.1, 9);
    expect(asItIs.uneven).toBeCloseTo(0.2, 9);
    expect(takenUp.uniform).toBeCloseTo(0.025, 9);
    expect(takenUp.uneven).toBeCloseTo(0.2, 9);
    expect(left).toBeCloseTo(0.235, 9);
  });

  it("takes up no more than the nut has left", () => {
    const assessment = exampleAssessment();
    const settings = { ...assessment.settings, takeUpLeft: 0.03 };
    expect(placeAt({ ...assessment, settings }, 110, MM).takenUp.uniform).toBeCloseTo(0.07, 9);
  });

  it("makes a nut fitted there bind wherever lost motion is less by more than the running clearance", () => {
    const { bindsWhenFitted } = placeAt(exampleAssessment(), 110, MM);
    const reach = halfWidthAt(0.2 - 0.025);
    expect(bindsWhenFitted).toHaveLength(2);
    expect(bindsWhenFitted[0]?.from).toBe(0);
    expect(bindsWhenFitted[0]?.to).toBeCloseTo(110 - reach, 0);
    expect(bindsWhenFitted[1]?.from).toBeCloseTo(110 + reach, 0);
    expect(bindsWhenFitted[1]?.to).toBe(300);
  });

  it("makes a nut fitted at the tight spot bind nowhere", () => {
    expect(placeAt(exampleAssessment(), 300, MM).bindsWhenFitted).toEqual([]);
  });

  it("names no place to bind at where the readings do not show that lost motion differs", () => {
    expect(placeAt(exampleAssessment(EVEN), 110, MM).bindsWhenFitted).toEqual([]);
  });

  it("is on the straight line between the profile's points", () => {
    const profile = [
      { position: 0, backlash: 0.1, low: 0.09, high: 0.11 },
      { position: 10, backlash: 0.2, low: 0.17, high: 0.23 },
    ];
    const place = placeAt(exampleAssessment({ profile, profileAfterAdjusting: profile }), 4, MM);
    expect(place.lostMotion.value).toBeCloseTo(0.14, 9);
    expect(place.lostMotion.high).toBeCloseTo(0.158, 9);
    expect(place.left).toBeCloseTo(0.14, 9);
  });
});
