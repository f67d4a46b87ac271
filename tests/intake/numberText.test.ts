import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { markEvidence, parseNumber, plainNumber } from "../../src/intake/numberText.ts";

describe("a number as people write it", () => {
  test.each([
    ["0", 0],
    ["-12.5", -12.5],
    ["+3", 3],
    [".5", 0.5],
    ["5.", 5],
    ["0,21", 0.21],
    [",5", 0.5],
    ["1e-3", 0.001],
    ["2,1E-02", 0.021],
    ["−0.4", -0.4],
    ["1,234.5", 1234.5],
    ["1.234,5", 1234.5],
    ["1,234,567", 1234567],
    ["1.234.567", 1234567],
    ["1 234,5", 1234.5],
    ["1\u202f234.5", 1234.5],
    ["1'234.5", 1234.5],
    ["12 345 678", 12345678],
    ["0.125", 0.125],
    ["0,125", 0.125],
    ["1234,567", 1234.567],
    ["1.234", 1.234],
    ["1/2", 0.5],
    ["3 1/2", 3.5],
    ["3-1/2", 3.5],
    ["-3 1/2", -3.5],
    ["12-15/64", 12.234375],
  ])("%s is %d", (text, value) => {
    expect(parseNumber(text, "none")).toEqual({ value });
  });

  test.each([
    "",
    "-",
    "x",
    "1.2.3",
    "1,2,3",
    "12 34",
    "1,23,456",
    "1..2",
    "1/3",
    "1/0",
    "0x10",
    "Infinity",
    "1e999",
    "1 2/",
    "--1",
    "1,234.567,8",
    "0.021.020",
    "0 210",
    "0,123.4",
  ])("%j is none", (text) => {
    expect(parseNumber(text, "none")).toEqual({ fault: "not a number" });
  });

  test("1,234 is told by the marks of the other numbers", () => {
    expect(parseNumber("1,234", "none")).toEqual({ fault: "ambiguous" });
    expect(parseNumber("1,234", "both")).toEqual({ fault: "ambiguous" });
    expect(parseNumber("1,234", ",")).toEqual({ value: 1.234 });
    expect(parseNumber("1,234", ".")).toEqual({ value: 1234 });
  });

  test("1.234 is a decimal unless the others have decimal commas", () => {
    expect(parseNumber("1.234", ".")).toEqual({ value: 1.234 });
    expect(parseNumber("1.234", ",")).toEqual({ value: 1234 });
    expect(parseNumber("1.234", "both")).toEqual({ fault: "ambiguous" });
  });
});

describe("the decimal mark that numbers show", () => {
  test.each([
    [["1", "2"], "none"],
    [["1,234", "1.234"], "none"],
    [["0.5", "1,234"], "."],
    [["0,5", "12"], ","],
    [["1.234,5"], ","],
    [["0,5", "0.5"], "both"],
  ] as const)("%j: %s", (texts, evidence) => {
    expect(markEvidence(texts)).toBe(evidence);
  });
});

test("a plain number is read as any number is, or left to be read as such", () => {
  const digits = fc.string({ unit: fc.constantFrom(..."0123456789"), maxLength: 5 });
  const text = fc
    .tuple(fc.constantFrom("", "-", "+"), digits, fc.constantFrom("", ".", ","), digits)
    .map((parts) => parts.join(""));
  fc.assert(
    fc.property(text, fc.constantFrom(".", ",", "both", "none"), (written, evidence) => {
      const value = plainNumber(written, evidence);
      expect(value === undefined ? parseNumber(written, evidence) : { value }).toEqual(
        parseNumber(written, evidence),
      );
    }),
    { numRuns: 2000 },
  );
});
