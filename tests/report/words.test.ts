import { describe, expect, it } from "vitest";
import { lengthsIn } from "../../src/inspection/lengths.ts";
import { verdictTitle } from "../../src/report/summary.ts";
import {
  allOf,
  anyOf,
  chanceWords,
  columnFigures,
  conformanceWords,
  estimateWords,
  inAHundred,
  intervalWords,
} from "../../src/report/words.ts";
import { exampleAssessment } from "./exampleAssessment.ts";

describe("an estimate in words", () => {
  const lengths = lengthsIn("mm", 0.01);

  it("gives half the interval, the wider side of it", () => {
    expect(estimateWords({ value: 0.18, low: 0.17, high: 0.2 }, lengths)).toBe("0.18 mm, give or take 0.02");
  });

  it("gives both ends of an interval of which one side is clearly longer", () => {
    const greatest = { value: 0.11, low: 0.1, high: 0.16 };
    expect(estimateWords(greatest, lengths)).toBe("between 0.10 and 0.16 mm, most likely 0.11");
    expect(intervalWords(greatest, lengths)).toBe("between 0.10 and 0.16");
    expect(estimateWords({ value: 0.18, low: 0.178, high: 0.19 }, lengths)).toBe(
      "0.18 mm, give or take 0.01",
    );
  });

  it("never claims to be exact", () => {
    expect(estimateWords({ value: 0.18, low: 0.178, high: 0.183 }, lengths)).toBe(
      "0.18 mm, give or take less than 0.01",
    );
  });
});

describe("a chance in words", () => {
  it.each([
    [1, "all but certain (more than 99 in 100)"],
    [0.97, "very likely (97 in 100)"],
    [0.72, "likely (72 in 100)"],
    [0.5, "about as likely as not (50 in 100)"],
    [0.2, "possible (20 in 100)"],
    [0.03, "unlikely (3 in 100)"],
    [0, "very unlikely (less than 1 in 100)"],
  ])("puts %d as %s", (chance, words) => {
    expect(chanceWords(chance)).toBe(words);
  });

  it("is never rounded to certainty", () => {
    expect(inAHundred(0.9999)).toBe("more than 99 in 100");
    expect(inAHundred(0.0001)).toBe("less than 1 in 100");
  });
});

describe("the title of a verdict", () => {
  const loose = { value: 0.04, low: 0.03, high: 0.05 };

  it.each([
    [{}, "Remake the screw, with nuts to match"],
    [{ verdict: "leave-alone", endFloat: loose }, "Leave it alone"],
    [{ verdict: "correct-end-float", endFloat: loose }, "Correct the end float"],
    [{ verdict: "adjust-nut", endFloat: null }, "Adjust the nut"],
    [{ verdict: "adjust-nut", endFloat: loose }, "Correct the end float, then adjust the nut"],
    [{ verdict: "adjust-nut", endFloat: { value: 0.011, low: 0.007, high: 0.015 } }, "Adjust the nut"],
    [{ verdict: "measure-more", reasons: ["coverage"] }, "Measure more before deciding"],
    [{ verdict: "measure-more", reasons: ["at-the-limit"] }, "Too close to the limit to call"],
    [{ verdict: "no-verdict", reasons: ["holds-load"] }, "No verdict"],
  ] as const)("of %o is %s", (changes, title) => {
    expect(verdictTitle(exampleAssessment(changes))).toBe(title);
  });
});

describe("a column of figures", () => {
  it("gives every figure as many decimals as the longest", () => {
    expect(columnFigures([1, 16.5, -0.25])).toEqual(["1.00", "16.50", "-0.25"]);
    expect(columnFigures([0, 420])).toEqual(["0", "420"]);
    expect(columnFigures([])).toEqual([]);
  });

  it("leaves out the traces of binary fractions", () => {
    expect(columnFigures([0.1 + 0.2, 1])).toEqual(["0.3", "1.0"]);
    expect(columnFigures([1e-9])).toEqual(["0"]);
  });
});

describe("a list in words", () => {
  it.each([
    [[], "", ""],
    [["a"], "a", "a"],
    [["a", "b"], "a and b", "a or b"],
    [["a", "b", "c"], "a, b and c", "a, b or c"],
  ] as const)("of %j", (parts, all, any) => {
    expect([allOf(parts), anyOf(parts)]).toEqual([all, any]);
  });
});

describe("conformance with the limit in words", () => {
  it("names the limit, and says whether it is proven", () => {
    expect(conformanceWords("proven")).toBe("within the limit, proven");
    expect(conformanceWords("disproven", "the limit of 0.15 mm")).toBe("over the limit of 0.15 mm, proven");
    expect(conformanceWords("not proven")).toBe("within or over the limit, not proven");
  });
});
