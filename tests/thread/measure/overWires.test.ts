import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { FORMS } from "../../../src/thread/forms/index.ts";
import { threadThickness } from "../../../src/thread/measure/groove.ts";
import {
  formulaError,
  overWires,
  overWiresByContact,
  overWiresByFormula,
  pitchDiameterFrom,
} from "../../../src/thread/measure/overWires.ts";
import { chosenWire, grooveOf, wireRange } from "../../../src/thread/measure/wires.ts";
import { leadAngle } from "../../../src/thread/size.ts";
import { cell, form, inch, metric, rowsOf } from "../reference.ts";

const MICROMETRE = 0.001;

describe("a measurement over wires", () => {
  it("from the contact of wire and helicoid agrees with straight cylinders laid in by brute force", () => {
    const rows = rowsOf("wires");
    expect(rows.length).toBeGreaterThan(10);
    for (const row of rows) {
      const groove = {
        halfAngle: cell(row, "half"),
        pitch: cell(row, "pitch"),
        starts: cell(row, "starts"),
      };
      const found = overWiresByContact(groove, cell(row, "pitchDiameter"), cell(row, "wire"));
      expect(Math.abs(found - cell(row, "overWires"))).toBeLessThan(2e-7);
    }
  });

  it("by the formula without lead is that of straight grooves", () => {
    // A wire of the best size touches at the pitch line: M = E + W + W sin α for a vanishing lead angle.
    const groove = { halfAngle: 15, pitch: 1e-4, starts: 1 };
    const wire = groove.pitch / 2 / Math.cos(Math.PI / 12);
    const expected = 50 + wire + wire * Math.sin(Math.PI / 12);
    expect(overWiresByFormula(groove, 50, wire)).toBeCloseTo(expected, 9);
  });

  it("agrees by both ways within 1 µm below 2° of lead angle, for every standard size", () => {
    let flat = 0;
    for (const each of FORMS)
      for (const { diameter, pitch } of each.sizes) {
        const size = metric(diameter, pitch);
        const groove = grooveOf(each, size);
        const basic = each.diameters(size).pitch;
        if (groove === null || leadAngle(size, basic) >= 2) continue;
        flat++;
        const { best, least } = wireRange(each, size, groove);
        expect(Math.abs(formulaError(groove, basic, Math.max(best, least)))).toBeLessThan(MICROMETRE);
      }
    expect(flat).toBeGreaterThan(100);
  });

  it("is told apart by the two ways where the lead is coarse", () => {
    const groove = { halfAngle: 15, pitch: 5, starts: 4 };
    expect(formulaError(groove, 21.5, 2.6)).toBeGreaterThan(20 * MICROMETRE);
    expect(formulaError({ ...groove, starts: 1 }, 21.5, 2.6)).toBeLessThan(MICROMETRE);
  });

  const threads = fc.record({
    halfAngle: fc.constantFrom(14.5, 15, 27.5, 30),
    pitch: fc.double({ min: 0.5, max: 20, noNaN: true }),
    starts: fc.integer({ min: 1, max: 3 }),
    slenderness: fc.double({ min: 4, max: 20, noNaN: true }),
    share: fc.double({ min: 0.96, max: 1.15, noNaN: true }),
    rule: fc.constantFrom("formula" as const, "contact" as const),
  });

  it("gives back the pitch diameter and the thickness that it was made from", () => {
    fc.assert(
      fc.property(threads, ({ halfAngle, pitch, starts, slenderness, share, rule }) => {
        const groove = { halfAngle, pitch, starts };
        const diameter = pitch * slenderness;
        const wire = (share * pitch) / 2 / Math.cos((halfAngle * Math.PI) / 180);
        const back = pitchDiameterFrom(groove, overWires(groove, diameter, wire, rule), wire, rule);
        expect(back).toBeCloseTo(diameter, 6);
        // A thread whose pitch line lies in by a hundredth of the pitch has thinner threads by its slope.
        const thickness = threadThickness(groove, diameter, diameter - 0.01 * pitch);
        expect(thickness / pitch).toBeCloseTo(0.5 - 0.01 * Math.tan((halfAngle * Math.PI) / 180), 9);
      }),
      { numRuns: 150 },
    );
  });

  it("of nonsense has no pitch diameter", () => {
    expect(pitchDiameterFrom({ halfAngle: 15, pitch: 5, starts: 1 }, -40, 2.6, "formula")).toBeNaN();
  });
});

describe("wires that fit", () => {
  it("touch at the pitch line, level with the crest, and at the crest's edge", () => {
    const size = metric(24, 5);
    const tr = form("trapezoidal-30");
    const groove = grooveOf(tr, size);
    if (groove === null) throw new Error("There is no groove.");
    const { best, least, largest } = wireRange(tr, size, groove);
    const alpha = Math.PI / 12;
    // A wire in a straight groove: its centre is so far from the axis.
    const centre = (wire: number): number => 21.5 / 2 + wire / 2 / Math.sin(alpha) - 1.25 / Math.tan(alpha);
    const touches = (wire: number): number => centre(wire) - (wire / 2) * Math.sin(alpha);
    expect(touches(best)).toBeCloseTo(21.5 / 2, 9);
    expect(centre(least) + least / 2).toBeCloseTo(12, 9);
    expect(touches(largest)).toBeCloseTo(12, 9);
  });

  it("clear the root of a shallow thread, which the best wire would rest on", () => {
    const size = inch(2, 2);
    const stub = form("stub-acme-29");
    const groove = grooveOf(stub, size);
    if (groove === null) throw new Error("There is no groove.");
    const range = wireRange(stub, size, groove);
    const alpha = (14.5 * Math.PI) / 180;
    const { pitch, screwMinor } = stub.diameters(size);
    const lowest = (wire: number): number =>
      pitch / 2 + wire / 2 / Math.sin(alpha) - size.pitch / 4 / Math.tan(alpha) - wire / 2;
    expect(lowest(range.best)).toBeLessThan(screwMinor / 2);
    expect(lowest(range.least)).toBeCloseTo(screwMinor / 2, 9);
    expect(chosenWire(range)).toEqual({ ok: true, value: range.least });
  });

  it("are refused with the reason where they do not", () => {
    const range = { best: 2.6, least: 2.4, largest: 3.3 };
    expect(chosenWire(range, 3)).toEqual({ ok: true, value: 3 });
    const [thin, thick] = [chosenWire(range, 2), chosenWire(range, 4)];
    expect(thin.ok ? "" : thin.problem.what).toContain("too thin");
    expect(thick.ok ? "" : thick.problem.what).toContain("too thick");
  });

  it("are none for a square thread", () => {
    expect(grooveOf(form("square"), metric(24, 5))).toBeNull();
  });
});
