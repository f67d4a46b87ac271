import { describe, expect, test } from "vitest";
import { inMillimetres, slideLengths, surveyInUnits } from "../../src/inspection/metric.ts";
import { readInspection } from "../../src/inspection/open.ts";
import type { Inspection } from "../../src/inspection/schema.ts";
import { IN_INCHES } from "./example.ts";

/** The same with every number rounded to a millionth, which leaves no trace of binary fractions. */
function tidy<Data>(data: Data): Data {
  return JSON.parse(
    JSON.stringify(data, (_, value) => (typeof value === "number" ? Number(value.toFixed(6)) : value)),
  );
}

const IN_MILLIMETRES: Inspection = {
  ...IN_INCHES,
  slide: {
    ...IN_INCHES.slide,
    units: "mm",
    travel: { from: -25.4, to: 508 },
    workingRange: { from: 50.8, to: 254 },
    screw: { lead: 5.08, starts: 1, hand: "left", form: "acme-29", nominalDiameter: 25.4 },
    nut: {
      kind: "two-halves",
      engagedLength: 50.8,
      adjustable: true,
      takeUpLeft: 0.254,
      takeUpUsed: 0.508,
      clearanceNew: 0.0254,
      wearLimit: 0.762,
    },
    backlashLimit: 0.254,
    runningClearance: 0.0254,
    endFloatAttainable: 0.0127,
  },
  surveys: [
    {
      ...IN_INCHES.surveys[0],
      indicator: { resolution: 0.0254, error: 0.0127, hysteresis: 0.00254, angleToTravel: 10 },
      endFloat: [0.0254, 0.0508],
      readings: [{ position: 25.4, backlash: 2.54, note: "by the stop", time: "09:31", excluded: "slipped" }],
    },
    {
      ...IN_INCHES.surveys[1],
      drivePlay: 0.0762,
      readings: [
        { position: 50.8, advancing: 7.62, retracting: 5.08 },
        { position: 76.2, backlash: 2.54 },
      ],
    },
    {
      ...IN_INCHES.surveys[2],
      dial: { travelPerDivision: 0.0254, divisions: 200, graduatedOnDiameter: true },
      readings: [{ position: 101.6, advancing: 150, retracting: 30 }],
    },
    {
      ...IN_INCHES.surveys[3],
      readings: [{ target: 127, direction: "advancing", reading: 129.54, run: 1 }],
    },
  ] as Inspection["surveys"],
};

describe("an inspection in inches", () => {
  test("is one that the schema allows, so that what follows is of a real one", () => {
    expect(readInspection(IN_INCHES).ok).toBe(true);
  });

  test("has every length in millimetres after conversion, and nothing else changed", () => {
    expect(tidy(inMillimetres(IN_INCHES))).toEqual(IN_MILLIMETRES);
  });

  test("comes back from millimetres as it was", () => {
    const back = IN_MILLIMETRES.surveys.map((survey) => surveyInUnits(survey, "mm", "in"));
    expect(tidy(back)).toEqual(IN_INCHES.surveys);
    expect(tidy(slideLengths(IN_MILLIMETRES.slide, "mm", "in"))).toEqual({ ...IN_INCHES.slide, units: "mm" });
  });
});

test("an inspection in millimetres is left as it is", () => {
  expect(inMillimetres(IN_MILLIMETRES)).toEqual(IN_MILLIMETRES);
});

test("a part of a slide is converted as far as it goes, and keys that are not known are left", () => {
  const part = { screw: { lead: 1, maker: 7 }, backlashLimit: "thin", oddity: 3 };
  expect(slideLengths(part, "in", "mm")).toEqual({ ...part, screw: { lead: 25.4, maker: 7 } });
});
