import { describe, expect, it } from "vitest";
import { cachedAssess } from "../../src/analysis/assess.ts";
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
    const once = cachedAssess();
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
