import { describe, expect, it } from "vitest";
import { repairBetween } from "../../../src/analysis/comparison/compareSurveys.ts";
import type { Inspection, Stage, Survey } from "../../../src/inspection/schema.ts";
import { pushPull } from "../examples.ts";
import { inspection } from "./slides.ts";

const before = pushPull([[0, 0.2]], { id: "before", taken: "2026-03-02", stage: "before-repair" });
const after = (stage: Stage) => pushPull([[0, 0.1]], { id: "after", taken: "2026-03-04", stage });
const event = (date: string, kind: "adjusted" | "parts-replaced" | "other") => ({ date, kind, note: "" });

function done(stage: Stage, ...events: NonNullable<Inspection["events"]>) {
  const [from, to] = [before, after(stage)];
  return repairBetween(inspection([from, to], {}, { events }), from, to);
}

describe("what was done between two surveys", () => {
  it("is what events between them tell, those of either day counted", () => {
    expect(done("routine", event("2026-03-02", "adjusted"))).toBe("adjusted");
    expect(done("routine", event("2026-03-04", "parts-replaced"))).toBe("parts-replaced");
    expect(done("routine", event("2026-03-01", "adjusted"), event("2026-03-05", "adjusted"))).toBe(null);
  });

  it("is a repair where events tell of several things", () => {
    expect(done("routine", event("2026-03-03", "adjusted"), event("2026-03-03", "parts-replaced"))).toBe(
      "repaired",
    );
  });

  it("is what the stage tells where no event does", () => {
    expect(done("after-adjusting")).toBe("adjusted");
    expect(done("after-repair", event("2026-03-03", "other"))).toBe("repaired");
    expect(done("running-in")).toBe(null);
  });

  it("is one thing where events tell of it twice", () => {
    expect(done("routine", event("2026-03-03", "adjusted"), event("2026-03-04", "adjusted"))).toBe(
      "adjusted",
    );
  });

  it("is what events tell, whatever the stage", () => {
    expect(done("after-repair", event("2026-03-03", "adjusted"))).toBe("adjusted");
  });

  it("counts an event of the day, whatever the hour of the survey before it", () => {
    const from = { ...before, taken: "2026-03-02T16:00:00Z" };
    const events = [event("2026-03-02", "adjusted")];
    expect(repairBetween(inspection([from], {}, { events }), from, after("routine"))).toBe("adjusted");
  });
});

describe("what was done, told by the stages of surveys", () => {
  const survey = (id: string, taken: string, stage: Stage) => pushPull([[0, 0.1]], { id, taken, stage });
  const first = survey("first", "2026-03-02", "after-adjusting");
  const last = survey("last", "2026-03-10", "running-in");
  const told = (...others: readonly Survey[]) =>
    repairBetween(inspection([first, ...others, last], {}, { events: [] }), first, last);

  it("leaves out the stage of the first of the two, which was reached before", () => {
    expect(told()).toBe(null);
  });

  it("takes in surveys between the two, those of either day too", () => {
    expect(told(survey("between", "2026-03-05", "after-repair"))).toBe("repaired");
    expect(told(survey("same day", "2026-03-02", "after-adjusting"))).toBe("adjusted");
    expect(told(survey("same day", "2026-03-10", "after-adjusting"))).toBe("adjusted");
  });

  it("leaves out surveys before and after the two", () => {
    expect(told(survey("earlier", "2026-03-01", "after-repair"))).toBe(null);
    expect(told(survey("later", "2026-03-11", "after-repair"))).toBe(null);
  });

  it("is a repair where they tell of adjusting and of a repair", () => {
    expect(
      told(survey("one", "2026-03-04", "after-adjusting"), survey("other", "2026-03-06", "after-repair")),
    ).toBe("repaired");
  });

  it("is nothing where the inspection has no events and no such stage", () => {
    const { events: _, ...bare } = inspection([first, last]);
    expect(repairBetween(bare, first, last)).toBe(null);
  });
});
