import { describe, expect, it } from "vitest";
import { overWires } from "../../../src/thread/measure/overWires.ts";
import { stillToComeOff, thicknessFromWires, threadWear } from "../../../src/thread/measure/wear.ts";
import { form, metric } from "../reference.ts";

const groove = { halfAngle: 15, pitch: 5, starts: 1 };
const WIRE = 2.6;

describe("wear of the thread", () => {
  it("is told for both flanks together against the thickest place", () => {
    const { places, deepest, reference, state } = threadWear(5, [
      { position: 0, thickness: 2.48 },
      { position: 150, thickness: 2.2 },
      { position: 300, thickness: 2.4 },
    ]);
    expect(places.map(({ worn }) => worn)).toEqual([0, 0.28, 0.08].map((each) => expect.closeTo(each, 12)));
    expect([deepest.position, reference.position]).toEqual([150, 0]);
    expect(deepest.shareLeft).toBeCloseTo(0.88, 12);
    expect(state).toBe("usable");
  });

  it.each([
    [2.4, "usable"],
    [1.86, "remake"],
    [0.82, "out-of-use"],
  ])("of a thread of 5 mm pitch that is %s mm thick makes it %s", (thickness, state) => {
    expect(threadWear(5, [{ position: 0, thickness }]).state).toBe(state);
  });

  it("comes out of readings over wires as it went in", () => {
    // A flank that has gone back by w on each side moves the pitch line in by 2 w / tan α on the diameter.
    const worn = 0.12;
    const pitchDiameter = 21.5 - worn / Math.tan(Math.PI / 12);
    const reading = overWires(groove, pitchDiameter, WIRE, "contact");
    const thickness = thicknessFromWires(
      form("trapezoidal-30"),
      metric(24, 5),
      groove,
      reading,
      WIRE,
      "contact",
    );
    expect(thickness).toBeCloseTo(2.5 - worn, 8);
  });

  it("leaves what still has to come off a reading", () => {
    const reading = overWires(groove, 21.7, WIRE, "formula");
    // The correction for the lead angle changes by less than a micrometre over so little.
    expect(stillToComeOff(groove, reading, 21.5, WIRE, "formula")).toBeCloseTo(0.2, 3);
  });

  it("needs a place", () => {
    expect(() => threadWear(5, [])).toThrow("No place");
  });
});
