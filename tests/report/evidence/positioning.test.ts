import { describe, expect, it } from "vitest";
import type { Positioning } from "../../../src/analysis/positioning/positioning.ts";
import { lengthsIn } from "../../../src/inspection/lengths.ts";
import { positioningRows } from "../../../src/report/evidence/positioning.ts";
import { resultOf } from "../../../src/report/result.ts";
import { terminalText } from "../../../src/report/terminal.ts";
import { exampleAssessment } from "../exampleAssessment.ts";
import { exampleInspection } from "../exampleInspection.ts";
import { resultSchema } from "../resultSchema.ts";

/** Made by hand: two targets 254 mm apart, of which the second was read once while retracting. */
const POSITIONING: Positioning = {
  runs: 1,
  correctedTo20: true,
  targets: [
    {
      target: 0,
      advancing: { deviation: -0.0254, standardDeviation: 0.00254, repeatability: 0.01016 },
      retracting: { deviation: 0.0254, standardDeviation: 0, repeatability: 0 },
      reversal: -0.0508,
      repeatability: 0.05588,
    },
    {
      target: 254,
      advancing: { deviation: -0.0508, standardDeviation: 0, repeatability: 0 },
      retracting: { deviation: 0.0254, standardDeviation: null, repeatability: null },
      reversal: -0.0762,
      repeatability: null,
    },
  ],
  reversal: 0.0762,
  meanReversal: -0.0635,
  repeatability: { advancing: 0.01016, retracting: null, bidirectional: null },
  meanDeviationRange: 0.0127,
  systematicDeviation: { advancing: 0.0254, retracting: 0, bidirectional: 0.0762 },
  accuracy: { advancing: 0.0508, retracting: null, bidirectional: null },
  flanks: {
    advancing: { range: 0.0356, byChance: 0.0081 },
    retracting: { range: 0.002, byChance: 0.0066 },
    worn: "advancing",
  },
};

const rowsOf = (changes: Partial<Positioning> = {}) =>
  Object.fromEntries(positioningRows({ ...POSITIONING, ...changes }, lengthsIn("mm", 0.001)));

describe("positioning in words", () => {
  it("names each quantity with its value both ways and each way", () => {
    expect(rowsOf()).toMatchObject({
      "Reversal value B": "0.076 mm; mean -0.064 mm",
      "Repeatability R": "not known; advancing 0.010 mm, retracting not known",
      "Mean deviation range M": "0.013 mm",
      "Systematic deviation E": "0.076 mm; advancing 0.025 mm, retracting 0.000 mm",
      "Accuracy A": "not known; advancing 0.051 mm, retracting not known",
    });
  });

  it("says which flank has worn, and how clearly", () => {
    expect(rowsOf()["Worn flank"]).toBe(
      "the one that drives the slide while advancing, as far as the lead was made even. About a straight line, deviations range over 0.036 mm advancing and 0.002 mm retracting; scatter and rounding alone give up to 0.008 mm and 0.007 mm in 99 of 100 surveys.",
    );
  });

  it.each([
    ["retracting", "the one that drives the slide while retracting, as far as"],
    ["both", "both, or the lead was not made even. About"],
    ["not proven", "not proven. About"],
  ] as const)("says of %s what it means", (worn, words) => {
    const flanks = POSITIONING.flanks === null ? null : { ...POSITIONING.flanks, worn };
    expect(rowsOf({ flanks })["Worn flank"]).toContain(words);
  });

  it("says what it takes where a flank cannot be told", () => {
    expect(rowsOf({ flanks: null })["Worn flank"]).toBe("not known: it takes three targets and two runs");
  });

  it("is a section of the terminal's text, within 80 columns, for a positioning survey only", () => {
    const text = (positioning?: Positioning) =>
      terminalText("x.json", exampleAssessment({ positioning }), exampleInspection());
    expect(text()).not.toContain("Positioning");
    expect(text(POSITIONING)).toContain("\nPositioning, after ISO 230-2, at 20 °C\n");
    expect(text({ ...POSITIONING, correctedTo20: false })).toContain("\nPositioning, after ISO 230-2\n");
    for (const line of text(POSITIONING).split("\n")) expect([...line].length).toBeLessThanOrEqual(80);
  });
});

describe("positioning in the result", () => {
  const inInches = resultOf(
    "x.json",
    exampleAssessment({ positioning: POSITIONING }),
    exampleInspection({ units: "in" }),
  );

  it("has the published keys and no others", () => {
    expect(resultSchema.parse(JSON.parse(JSON.stringify(inInches)))).toEqual(inInches);
  });

  it("is in the slide's unit throughout, but for the number of runs", () => {
    const { positioning } = inInches;
    expect(positioning?.runs).toBe(1);
    expect(positioning?.correctedTo20).toBe(true);
    expect(positioning?.targets[1].target).toBe(10);
    expect(positioning?.targets[0].advancing).toEqual({
      deviation: -0.001,
      standardDeviation: 0.0001,
      repeatability: 0.0004,
    });
    expect(positioning?.targets[1].retracting.standardDeviation).toBeNull();
    expect(positioning?.meanReversal).toBe(-0.0025);
    expect(positioning?.accuracy).toEqual({ advancing: 0.002, retracting: null, bidirectional: null });
    expect(positioning?.flanks?.advancing.range).toBe(0.001402);
    expect(positioning?.flanks?.worn).toBe("advancing");
  });

  it("is null for a survey by another method", () => {
    expect(resultOf("x.json", exampleAssessment(), exampleInspection()).positioning).toBeNull();
  });
});
