import { describe, expect, it } from "vitest";
import { cautionsOf } from "../../src/report/cautions.ts";
import { exampleAssessment } from "./exampleAssessment.ts";

const { settings } = exampleAssessment();
const cautions = (changes: Parameters<typeof exampleAssessment>[0]): string =>
  cautionsOf(exampleAssessment(changes)).join("\n");

describe("the cautions", () => {
  it("always name isolation, climb milling, and the maker's figures", () => {
    for (const verdict of ["leave-alone", "adjust-nut", "no-verdict"] as const) {
      const text = cautions({ verdict });
      expect(text).toContain("Isolate the machine");
      expect(text).toContain("climb milling");
      expect(text).toContain("maker's figures and local codes");
    }
  });

  it("put a screw that holds up a load before all else", () => {
    const [first] = cautionsOf(exampleAssessment({ settings: { ...settings, holdsLoad: true } }));
    expect(first).toContain("safety part");
    expect(cautions({})).not.toContain("safety part");
  });

  it.each([
    ["adjust-nut", ["A nut with its clearance taken up"]],
    ["replace-nuts", ["New nuts"]],
    ["leave-alone", []],
    ["remake-screw", []],
  ] as const)("for %s warn of seizing at the tight spot: %j", (verdict, nuts) => {
    const warnings = cautionsOf(exampleAssessment({ verdict })).filter((text) => text.includes("can seize"));
    expect(warnings).toEqual(
      nuts.map((nut) => `${nut} can seize at the tight spot: run the whole travel by hand before power.`),
    );
  });

  it("ask for a second way of measuring before a screw is remade, and also when it is only likeliest", () => {
    expect(cautions({})).toContain("second way of measuring");
    expect(cautions({ verdict: "measure-more", likeliest: "remake-screw" })).toContain("second way");
    expect(cautions({ verdict: "adjust-nut" })).not.toContain("second way of measuring");
  });

  it("say when the take-up left in the nut is not known", () => {
    const known = { ...settings, takeUpLeft: 0.5 };
    expect(cautions({ verdict: "adjust-nut" })).toContain("can still take up is not known");
    expect(cautions({ verdict: "adjust-nut", settings: known })).not.toContain("is not known");
  });

  it("say that nut and thrust bearing cannot be told apart without end float", () => {
    expect(cautions({ endFloat: null })).toContain("cannot be told apart");
    expect(cautions({})).not.toContain("cannot be told apart");
  });
});
