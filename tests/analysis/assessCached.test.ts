import { describe, expect, it } from "vitest";
import { assessWithDraws, cachedAssess } from "../../src/analysis/assess.ts";
import { inspection, level } from "./comparison/slides.ts";

const BOTH = inspection([
  level("first", 0.05, { taken: "2026-01-10", stage: "running-in" }),
  level("second", 0.06, { taken: "2026-02-10", stage: "running-in" }),
]);

describe("a survey that is assessed once", () => {
  it("comes to what it comes to by itself", () => {
    const [once, alone] = [cachedAssess()(BOTH, "first"), assessWithDraws(BOTH, "first")];
    if (!once.ok || !alone.ok) throw new Error("There are readings enough.");
    expect(once.value.assessment).toEqual(alone.value.assessment);
  });

  it("is assessed again when it or the slide has changed, and not when another survey has", () => {
    const assess = cachedAssess();
    const before = assess(BOTH, "first");
    const [first, ...others] = BOTH.surveys;
    if (first === undefined) throw new Error("There are two.");
    expect(assess({ ...BOTH, surveys: [first] }, "first")).toBe(before);
    const wider = { ...BOTH, slide: { ...BOTH.slide, backlashLimit: 0.4 } };
    const again = assess(wider, "first");
    expect(again.ok && again.value.assessment.settings.limit).toBe(0.4);
    const struck = { ...first, readings: first.readings.slice(1) };
    const fewer = assess({ ...wider, surveys: [struck, ...others] }, "first");
    expect(fewer.ok && fewer.value.survey.readings.length).toBe(first.readings.length - 1);
  });

  it("is told by its own readings, whichever of several it is", () => {
    const assess = cachedAssess();
    const [before, other] = [assess(BOTH, "second"), assess(BOTH, "first")];
    expect(assess(BOTH, "second")).toBe(before);
    expect(assess(BOTH, "first")).toBe(other);
    const [first, second] = BOTH.surveys;
    const struck = { ...second, readings: second.readings.slice(1) };
    const fewer = assess({ ...BOTH, surveys: [first, struck] }, "second");
    expect(fewer.ok && fewer.value.survey.readings.length).toBe(second.readings.length - 1);
  });

  it("is forgotten when it is taken away, so that another of its name is not taken for it", () => {
    const assess = cachedAssess();
    const before = assess(BOTH, "first");
    assess({ ...BOTH, surveys: BOTH.surveys.slice(1) }, "second");
    expect(assess(BOTH, "first")).not.toBe(before);
  });

  it("is not remembered where there is none of that name", () => {
    expect(cachedAssess()(BOTH, "none")).toMatchObject({ ok: false });
  });
});
