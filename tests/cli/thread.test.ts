import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { tightspot, workshop } from "./command.ts";
import { wornScrew } from "./inspections.ts";

const { file, path } = workshop();
const inspection = wornScrew();

async function result(...args: readonly string[]) {
  const { code, out, err } = await tightspot(["thread", ...args, "--json"]);
  expect([code, err]).toEqual([0, ""]);
  return JSON.parse(out);
}

const ACME = ["--form", "acme-29", "--diameter", "1", "--per-inch", "5"];
const TR = ["--form", "trapezoidal-30", "--diameter", "24", "--pitch", "5"];

describe("the command thread", () => {
  it("gives the published limits of a class, in the standard's own unit", async () => {
    const { units, screw, nut, class: tolerance } = await result(...ACME, "--class", "2G");
    expect([units, tolerance]).toEqual(["in", "2G"]);
    expect(screw).toEqual({
      major: { max: 1, min: 0.99 },
      pitch: { max: 0.892, min: 0.8726 },
      minor: { max: 0.78, min: 0.7509 },
    });
    expect(nut.pitch).toEqual({ max: 0.9194, min: 0.9 });
  });

  it("gives basic sizes with one end open where no class is asked for, and the running fit", async () => {
    const { screw, nut, fit, wires, tool, leadAngle } = await result(...TR);
    expect(screw).toEqual({
      major: { max: 24, min: null },
      pitch: { max: 21.5, min: null },
      minor: { max: 18.5, min: null },
    });
    expect(nut).toEqual({
      major: { max: null, min: 24.5 },
      pitch: { max: null, min: 21.5 },
      minor: { max: null, min: 19 },
    });
    expect(fit.clearance).toEqual({ from: 0.025, to: 0.05 });
    expect(fit.screwPitch.max).toBeCloseTo(21.5 - 0.025 / Math.tan(Math.PI / 12), 4);
    expect(wires.best).toBeCloseTo(2.5 / Math.cos(Math.PI / 12), 4);
    expect(wires.overWires.min).toBeNull();
    expect(Object.keys(tool)).toEqual(
      expect.arrayContaining(["tipWidth", "depth", "leadingClearance", "trailingClearance"]),
    );
    for (const [key, diameter] of [
      ["major", 24],
      ["pitch", 21.5],
      ["minor", 18.5],
    ] as const)
      expect(leadAngle[key]).toBeCloseTo((Math.atan(5 / (Math.PI * diameter)) * 180) / Math.PI, 4);
  });

  it("measures over the standard's wires as its formula says", async () => {
    const wire = 0.1;
    const { wires } = await result(...ACME, "--class", "2G", "--wire", String(wire));
    const alpha = (14.5 * Math.PI) / 180;
    const lead = 0.2 / (Math.PI * 0.892);
    const expected =
      0.892 +
      wire * (1 + 1 / Math.sin(alpha)) -
      0.1 / Math.tan(alpha) +
      (wire / 2) * lead ** 2 * (Math.cos(alpha) / Math.tan(alpha));
    expect(wires.overWires.max).toBeCloseTo(expected, 5);
    expect(wires.chosen).toBe(0.1);
  });

  it("solves the contact where the lead is coarse, and shows the formula's error", async () => {
    const { wires } = await result(...TR, "--starts", "4");
    expect(wires.rule).toBe("contact");
    expect(wires.formulaError).toBeGreaterThan(0.02);
  });

  it("works a reading back to pitch diameter, thickness and what is still to come off", async () => {
    const { wires } = await result(...TR, "--wire", "2.6");
    const { reading } = await result(...TR, "--wire", "2.6", "--over-wires", String(wires.target.max + 0.2));
    expect(reading.toMax).toBeCloseTo(0.2, 4);
    expect(reading.pitchDiameter).toBeCloseTo(21.4067 + 0.2, 3);
    expect(reading.thickness).toBeCloseTo(2.475 + 0.2 * Math.tan(Math.PI / 12), 3);
    expect(reading.infeedToMax).toBeCloseTo(0.1, 3);
  });

  it("means the same thread in millimetres and in inches, whichever way it is said", async () => {
    const ways = [
      [...ACME],
      ["--form", "acme-29", "--diameter", "25.4mm", "--pitch", "5.08mm", "--units", "in"],
      ["--form", "acme-29", "--diameter", "1in", "--lead", "0.2"],
    ];
    const [first, ...others] = await Promise.all(ways.map((each) => result(...each)));
    for (const other of others)
      expect([other.screw, other.nut, other.wires]).toEqual([first.screw, first.nut, first.wires]);
    const metric = await result(...ACME.map((each) => (each === "1" ? "1in" : each)), "--units", "mm");
    expect(metric.screw.pitch.max).toBeCloseTo(first.screw.pitch.max * 25.4, 4);
    expect(metric.wires.overWires.max).toBeCloseTo(first.wires.overWires.max * 25.4, 4);
    expect(metric.leadAngle).toEqual(first.leadAngle);
  });

  it("cuts a pitch of one system on a diameter of the other", async () => {
    const mixed = await result("--form", "trapezoidal-30", "--diameter", "22mm", "--per-inch", "5");
    expect(mixed).toMatchObject({ units: "mm", pitch: 5.08, designation: null });
    expect(mixed.screw.pitch.max).toBeCloseTo(22 - 2.54, 5);
  });

  it("takes from a slide's file what options do not say, starts included", async () => {
    const slide = {
      ...inspection.slide,
      screw: { lead: 10, starts: 2, hand: "left", form: "trapezoidal-30", nominalDiameter: 24 },
      runningClearance: 0.03,
    };
    const path = file("slide.json", JSON.stringify({ ...inspection, slide, surveys: [] }));
    const found = await result(path, "--diameter", "26");
    expect(found).toMatchObject({ pitch: 5, lead: 10, starts: 2, hand: "left", diameter: 26 });
    expect(found.fit.clearance).toEqual({ from: 0.03, to: 0.06 });
    expect(found.assumed).toContain(
      "The diameter is as the command says, --diameter 26, and not as the file does.",
    );
  });

  it("has no wires for a square thread, but a thickness to cut to", async () => {
    const { wires, fit } = await result("--form", "square", "--diameter", "25mm", "--pitch", "5");
    expect(wires).toBeNull();
    expect(fit.thickness.max).toBe(2.475);
  });

  it("tells wear along the screw, from readings over wires and from thicknesses", async () => {
    const { wear } = await result(...TR, "--thickness-along", "0=2.48,150=1.8,300=2.4");
    expect(wear.state).toBe("remake");
    expect(wear.deepest).toEqual({ position: 150, thickness: 1.8, worn: 0.68, shareLeft: 0.72 });
    const over = await result(...TR, "--wire", "2.6", "--wires-along", "0=24.7,150=24.2");
    expect(over.wear.deepest.worn).toBeCloseTo(0.5 * Math.tan(Math.PI / 12), 3);
  });

  it("takes the thread measured in a survey from the file", async () => {
    const screw = { lead: 5, form: "trapezoidal-30", nominalDiameter: 24 };
    const thread = [
      { position: 0, thickness: 2.48 },
      { position: 150, thickness: 2.38 },
    ];
    const surveys = inspection.surveys.map((survey) => ({ ...survey, thread }));
    const slide = { ...inspection.slide, screw };
    const measured = file("measured.json", JSON.stringify({ ...inspection, slide, surveys }));
    const { wear } = await result(measured);
    expect(wear.deepest).toMatchObject({ position: 150, worn: 0.1 });
    const wrong = surveys.map((survey) => ({ ...survey, thread: [{ position: 0, thickness: 24 }] }));
    const path = file("wrong.json", JSON.stringify({ ...inspection, slide, surveys: wrong }));
    const { code, err } = await tightspot(["thread", path]);
    expect(code).toBe(2);
    expect(err).toMatch(/thread\[0\]: a thread of this pitch cannot be so thick/);
  });

  it("sets up the grinder for a blank that is pitched, and a sine bar of any length", async () => {
    const { grinding } = await result(...TR, "--pitched", "10", "--sine-bar", "200");
    const plate = (Math.atan(Math.tan(Math.PI / 12) / Math.cos(Math.PI / 18)) * 180) / Math.PI;
    for (const each of grinding) {
      expect(each.plate).toBeCloseTo(plate, 4);
      expect(each.plateHeight).toBeCloseTo(200 * Math.sin((plate * Math.PI) / 180), 3);
    }
  });

  it("identifies a worn thread, and says how to go on", async () => {
    const worn = ["--outside", "23.9", "--turns", "10", "--over", "50.1", "--angle", "30"];
    const { identification } = await result(...worn);
    expect(identification.candidates[0]).toMatchObject({ form: "trapezoidal-30", diameter: 24, pitch: 5 });
    expect(identification.settled).toBe(true);
    const { out } = await tightspot(["thread", ...worn]);
    expect(out).toMatch(/^Most likely Tr 24 × 5, /);
    expect(out.replace(/\s+/g, " ")).toContain("--form trapezoidal-30 --diameter 24 --pitch 5");
  });

  it("tells everything in words, the running fit first, and what was assumed", async () => {
    const { code, out } = await tightspot(["thread", ...ACME, "--class", "2G"]);
    expect(code).toBe(0);
    expect(out).toMatch(/^Replacement thread: 1-5 Acme, single start, right hand\n\nRunning fit/);
    for (const part of [
      "0.8920 to 0.8726 in",
      "Over wires",
      "Grinding the tool",
      "tap",
      "Isolate",
      "Assumed",
    ])
      expect(out).toContain(part);
    expect(out.replace(/\s+/g, " ")).toContain("more axial clearance than a slide can use");
    for (const line of out.split("\n")) expect(line.length).toBeLessThanOrEqual(80);
  });

  it("draws the thread and writes the slip for the lathe", async () => {
    const [drawing, sheet] = [path("thread.svg"), path("slip.html")];
    const { code, err } = await tightspot(["thread", ...TR, "--drawing", drawing, "--sheet", sheet]);
    expect([code, err]).toEqual([0, ""]);
    expect(readFileSync(drawing, "utf8")).toMatch(/^<svg [\s\S]*Tr 24 × 5/);
    expect(readFileSync(sheet, "utf8")).toMatch(/^<!doctype html>[\s\S]*Slip for the lathe/);
    const away = await tightspot(["thread", ...TR, "--sheet", path("no/such/slip.html")]);
    expect(away.code).toBe(2);
    expect(away.err).toMatch(/it cannot be written \(ENOENT\)/);
  });

  it("lists its options, no line too long", async () => {
    const { out } = await tightspot(["thread", "--help"]);
    const options =
      "form diameter pitch per-inch starts hand class wire over-wires units json outside turns over";
    for (const option of options.split(" ")) expect(out).toContain(`--${option} `);
    for (const line of out.split("\n")) expect(line.length).toBeLessThanOrEqual(80);
  });

  it.each([
    [["--diameter", "24"], /--form: the thread form is missing/, /trapezoidal-30/],
    [["--form", "round", "--diameter", "24"], /--form: "round" is no thread form/, /acme-29/],
    [["--form", "square", "--pitch", "5"], /--diameter: the outside diameter is missing/, /24mm/],
    [["--form", "square", "--diameter", "24"], /--pitch: the pitch is missing/, /--per-inch/],
    [[...TR, "--per-inch", "5"], /--pitch and --per-inch: they say the same/, /one of/],
    [[...TR, "--units", "cm"], /--units: "cm" is none of its values/, /mm, in/],
    [["--form", "square", "--diameter", "big", "--pitch", "5"], /--diameter: is "big"/, /20mm/],
    [
      ["--form", "acme-29", "--diameter", "1", "--pitch", "5"],
      /--pitch: it is as large as/,
      /threads per inch/,
    ],
    [[...TR, "--starts", "1.5"], /--starts: "1.5" is not a whole number/, /digits/],
    [[...TR, "--starts", "30"], /--starts: 30 is not a number of starts/, /1 to 24/],
    [[...TR, "--starts", "24"], /--pitch: the thread would be deeper, or steeper/, /Check/],
    [[...TR, "--hand", "both"], /--hand: "both" is none of its values/, /right, left/],
    [[...TR, "--class", "7e"], /--class: no class "7e"/, /ISO 2903/],
    [[...ACME, "--class", "5G"], /--class: no class "5G"/, /2G, 3G, 4G/],
    [[...TR, "--wire", "2"], /--wire: it is too thin/, /between the least/],
    [[...TR, "--over-wires", "40"], /--over-wires: it would put the pitch line outside/, /unit/],
    [[...TR, "--clearance", "3"], /--clearance: it is more than an eighth/, /unit/],
    [
      [...TR, "--clearance", "0.05..0.02"],
      /--clearance: must be greater than zero, the lesser/,
      /0\.02\.\.0\.05/,
    ],
    [[...TR, "--thickness-along", "0:2.4"], /--thickness-along: "0:2.4" is not a place/, /PLACE=READING/],
    [[...TR, "--thickness-along", "0=24"], /--thickness-along: a thread of this pitch/, /unit/],
    [[...TR, "--chip", "0.0001"], /--chip: more than 200 steps/, /thicker chip/],
    [["--outside", "24"], /--turns, --over: is missing/, /--over LENGTH/],
    [["--outside", "24", "--turns", "1", "--over", "50"], /--over: a thread from one turn/, /units/],
    [[file("log.csv", "position,backlash\n0,0.2\n")], /log\.csv: this is a log/, /options/],
    [
      [
        file(
          "lead.json",
          JSON.stringify({ ...inspection, slide: { ...inspection.slide, screw: { lead: "5" } } }),
        ),
      ],
      /lead\.json: slide\.screw\.lead/,
      /file/,
    ],
    [["no.json"], /no\.json: there is no such file/, /name/],
  ] as const)("refuses %o with its cure", async (args, reason, cure) => {
    const { code, out, err } = await tightspot(["thread", ...args]);
    expect([code, out]).toEqual([2, ""]);
    expect(err).toMatch(reason);
    expect(err).toMatch(cure);
    expect(err.trim().split("\n")).toHaveLength(2);
  });
});
