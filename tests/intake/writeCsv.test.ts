import { describe, expect, test } from "vitest";
import type { Inspection, Survey } from "../../src/inspection/schema.ts";
import { surveyCsv } from "../../src/intake/writeCsv.ts";

const survey: Survey = {
  id: "first",
  taken: "2026-03-14",
  stage: "before-repair",
  method: "push-pull",
  endFloat: [0.01, 0.02],
  readings: [
    { position: 0, backlash: 0.21, time: "09:30" },
    { position: 12.5, backlash: -0.01, note: "=HYPERLINK(1)" },
    { position: 1250.125, backlash: 0.2, note: "gib, loose", excluded: "no" },
  ],
};

const inspection: Inspection = {
  format: "tightspot-inspection",
  version: 1,
  slide: {
    id: "table",
    name: "Table, long way",
    units: "mm",
    travel: { from: 0, to: 1300 },
    screw: { lead: 4 },
    backlashLimit: 0.15,
    maker: "7",
  },
  surveys: [survey],
};

describe("a survey as CSV", () => {
  test("has the slide's data above the readings, commas between cells and decimal points", () => {
    expect(surveyCsv(inspection, survey, ".").split("\r\n")).toEqual([
      "slide.id: table",
      '"slide.name: Table, long way"',
      "slide.units: mm",
      "slide.travel.from: 0",
      "slide.travel.to: 1300",
      "slide.screw.lead: 4",
      "slide.backlashLimit: 0.15",
      '"slide.maker: ""7"""',
      "survey.id: first",
      "survey.taken: 2026-03-14",
      "survey.stage: before-repair",
      "survey.method: push-pull",
      "survey.endFloat: 0.01 0.02",
      "position (mm),backlash (mm),time,note,excluded",
      "0,0.21,09:30,,",
      '12.5,-0.01,,"""=HYPERLINK(1)""",',
      '1250.125,0.2,,"gib, loose","""no"""',
      "",
    ]);
  });

  test("has semicolons between cells where commas are decimal, and no comma that could set off thousands", () => {
    const lines = surveyCsv(
      inspection,
      { ...survey, readings: [{ position: 1.125, backlash: 0.125 }] },
      ",",
    ).split("\r\n");
    expect(lines.slice(-4)).toEqual([
      "survey.endFloat: 0,01 0,02",
      "position (mm);backlash (mm)",
      "1,1250;0,125",
      "",
    ]);
  });

  test("begins with a byte-order mark only where there is more than ASCII in it", () => {
    const accented = { ...inspection, slide: { ...inspection.slide, name: "Längsschlitten" } };
    expect(surveyCsv(accented, survey, ".").startsWith("\uFEFFslide.id")).toBe(true);
    expect(surveyCsv(inspection, survey, ".").startsWith("slide.id")).toBe(true);
  });

  test.each([
    [
      "dial-pair",
      { position: 1, advancing: 98, retracting: 3 },
      "position (mm),advancing (div),retracting (div)",
      "1,98,3",
    ],
    [
      "indicator-pair",
      { position: 1, advancing: 2.5, retracting: 2.25 },
      "position (mm),advancing (mm),retracting (mm)",
      "1,2.5,2.25",
    ],
    [
      "positioning",
      { target: 5, direction: "retracting", reading: 4.98, run: 2 },
      "target (mm),direction,reading (mm),run",
      "5,retracting,4.98,2",
    ],
  ] as const)("has the columns of its method: %s", (method, reading, headings, row) => {
    const lines = surveyCsv(inspection, { ...survey, method, readings: [reading] }, ".").split("\r\n");
    expect(lines.slice(-3)).toEqual([headings, row, ""]);
  });
});
