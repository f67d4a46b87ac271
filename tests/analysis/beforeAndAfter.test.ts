import { describe, expect, it } from "vitest";
import { assessWithDraws } from "../../src/analysis/assess.ts";
import { assessOnce } from "../../src/analysis/assessOnce.ts";
import { beforeAndAfter } from "../../src/analysis/beforeAndAfter.ts";
import { compareSurveys } from "../../src/analysis/comparison/compareSurveys.ts";
import { runningInOf } from "../../src/analysis/runningIn/runningInOf.ts";
import { inspection, level } from "./comparison/slides.ts";

const three = inspection([
  level("first", 0.05, { taken: "2026-01-10", stage: "running-in" }),
  level("second", 0.06, { taken: "2026-02-10", stage: "running-in" }),
  level("third", 0.07, { taken: "2026-03-10", stage: "running-in" }),
]);

describe("before and after", () => {
  it("is the comparison of two surveys and the trend through all", () => {
    const [comparison, history] = [compareSurveys(three), runningInOf(three)];
    if (!comparison.ok || !history.ok) throw new Error("There are surveys enough.");
    expect(beforeAndAfter(three)).toEqual({
      ok: true,
      value: { comparison: comparison.value, history: history.value },
    });
  });

  it("fails where one of the surveys named is not there", () => {
    expect(beforeAndAfter(three, { from: "none" })).toMatchObject({ ok: false });
  });

  it("assesses no survey twice", () => {
    const asked: string[] = [];
    const once = assessOnce();
    const seen = new Set<unknown>();
    beforeAndAfter(three, {}, (all, id) => {
      asked.push(id);
      const assessed = once(all, id);
      seen.add(assessed);
      return assessed;
    });
    expect(asked).toHaveLength(5);
    expect(seen.size).toBe(3);
  });
});

describe("a survey that is assessed once", () => {
  it("comes to what it comes to by itself", () => {
    const [once, alone] = [assessOnce()(three, "first"), assessWithDraws(three, "first")];
    if (!once.ok || !alone.ok) throw new Error("There are readings enough.");
    expect(once.value.assessment).toEqual(alone.value.assessment);
  });

  it("is assessed again when it or the slide has changed, and not when another survey has", () => {
    const assess = assessOnce();
    const before = assess(three, "first");
    const [first, ...others] = three.surveys;
    if (first === undefined) throw new Error("There are three.");
    expect(assess({ ...three, surveys: [first] }, "first")).toBe(before);
    const wider = { ...three, slide: { ...three.slide, backlashLimit: 0.4 } };
    const again = assess(wider, "first");
    expect(again.ok && again.value.assessment.settings.limit).toBe(0.4);
    const struck = { ...first, readings: first.readings.slice(1) };
    const fewer = assess({ ...wider, surveys: [struck, ...others] }, "first");
    expect(fewer.ok && fewer.value.survey.readings.length).toBe(first.readings.length - 1);
  });

  it("is forgotten when it is taken away, so that another of its name is not taken for it", () => {
    const assess = assessOnce();
    const before = assess(three, "first");
    assess({ ...three, surveys: three.surveys.slice(1) }, "second");
    expect(assess(three, "first")).not.toBe(before);
  });

  it("is not remembered where there is none of that name", () => {
    expect(assessOnce()(three, "none")).toMatchObject({ ok: false });
  });
});
