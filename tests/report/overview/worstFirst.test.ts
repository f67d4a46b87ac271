import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Assessment } from "../../../src/analysis/assessment.ts";
import type { SlideOverview } from "../../../src/report/overview/slideOverview.ts";
import { worstFirst } from "../../../src/report/overview/worstFirst.ts";
import { propertyRuns } from "../../propertyRuns.ts";
import { exampleAssessment } from "../exampleAssessment.ts";
import { exampleInspection } from "../exampleInspection.ts";

function slide(file: string, changes: Partial<Assessment>): SlideOverview {
  return { file, inspection: exampleInspection(), assessment: exampleAssessment(changes) };
}

const none = { verdict: "no-verdict", likeliest: null, chances: null } as const;

/** In the order that they are to be told in. */
const ORDERED: readonly SlideOverview[] = [
  slide("holds a load, over its limit", { ...none, reasons: ["holds-load"], conformance: "disproven" }),
  slide("remake, three times the limit", { greatest: { value: 0.45, low: 0.44, high: 0.46 } }),
  slide("remake, twice the limit", { greatest: { value: 0.3, low: 0.29, high: 0.31 } }),
  slide("perhaps remake", { verdict: "measure-more", reasons: ["chances"], likeliest: "remake-screw" }),
  slide("replace", { verdict: "replace-nuts", likeliest: "replace-nuts" }),
  slide("adjust", { verdict: "adjust-nut", likeliest: "adjust-nut" }),
  slide("perhaps adjust", { verdict: "measure-more", reasons: ["coverage"], likeliest: "adjust-nut" }),
  slide("end float", { verdict: "correct-end-float", likeliest: "correct-end-float" }),
  slide("a spring hides it", { ...none, reasons: ["spring-loaded"] }),
  slide("perhaps in order", { verdict: "measure-more", reasons: ["coverage"], likeliest: "leave-alone" }),
  slide("in order", { verdict: "leave-alone", likeliest: "leave-alone" }),
];

describe("the order of an overview", () => {
  it("has safety parts first, then the most work, the settled before the likely, whatever the order given", () => {
    fc.assert(
      fc.property(fc.shuffledSubarray([...ORDERED], { minLength: 2 }), (given) => {
        const expected = ORDERED.filter((each) => given.includes(each));
        expect(worstFirst(given)).toEqual(expected);
      }),
      { numRuns: propertyRuns(50) },
    );
  });

  it("does not put a safety part first that provably keeps its limit", () => {
    const knee = slide("knee", { ...none, reasons: ["holds-load"], conformance: "proven" });
    const [worst] = ORDERED.slice(1, 2);
    expect(worstFirst([knee, ...ORDERED.slice(1, 2)])[0]).toBe(worst);
  });

  it("keeps the order given among slides that stand alike", () => {
    const alike = ["b", "a", "c"].map((file) => slide(file, {}));
    expect(worstFirst(alike)).toEqual(alike);
  });
});
