import { describe, expect, test } from "vitest";
import { numbersIn, patternOf, valueIn } from "../../../../src/app/entry/gauge/numberInLine.ts";
import { readTypedFigure } from "../../../../src/intake/typedFigure.ts";

describe("the value in a gauge's line", () => {
  test.each([
    ["+0.213", 0.213],
    ["  0.213", 0.213],
    ["01A+00000.213", 0.213],
    ["D1 -  0.004", -0.004],
    ["0,213 mm", 0.213],
    ["+000.50 mm OK 1", 0.5],
    ["3 12", 12],
    ['0.0084"', 0.21336],
    ["0.0084in", 0.21336],
    ["CH1:  213 um", 0.213],
  ])("%j is %f mm", (line, millimetres) => {
    const value = valueIn(line, { by: "itself" });
    expect(readTypedFigure(value ?? "", "mm")).toEqual({ ok: true, value: millimetres });
  });

  test("is the number at its place, where one was chosen", () => {
    const line = "S 1.5 V 0.213 mm";
    expect(numbersIn(line)).toEqual([
      { before: "S ", text: "1.5" },
      { before: " V ", text: "0.213 mm" },
    ]);
    expect(valueIn(line, { by: "place", place: 1 })).toBe("0.213 mm");
    expect(valueIn("S 1.5", { by: "place", place: 1 })).toBeNull();
  });

  test("is what a pattern's group matches, else all of it", () => {
    expect(valueIn("X=0.1;Y=0.2", { by: "pattern", pattern: "Y=([-+.0-9]+)" })).toBe("0.2");
    expect(valueIn("X=0.1;Y=0.2", { by: "pattern", pattern: "[.0-9]+" })).toBe("0.1");
    expect(valueIn("X=0.1", { by: "pattern", pattern: "Y=" })).toBeNull();
    expect(valueIn("X=0.1", { by: "pattern", pattern: "(" })).toBeNull();
    expect(patternOf("(")).toBeNull();
  });

  test("is none where there is no number", () => {
    expect(valueIn("ERROR", { by: "itself" })).toBeNull();
  });
});
