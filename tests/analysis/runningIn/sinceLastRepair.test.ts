import { describe, expect, it } from "vitest";
import { sinceLastRepair, timesOf } from "../../../src/analysis/runningIn/sinceLastRepair.ts";
import type { Inspection, Stage, Survey } from "../../../src/inspection/schema.ts";
import { inspection } from "../comparison/slides.ts";
import { pushPull } from "../examples.ts";

const survey = (taken: string, stage: Stage, hoursOfUse?: number): Survey =>
  pushPull([[0, 0.1]], { id: taken, taken, stage, ...(hoursOfUse === undefined ? {} : { hoursOfUse }) });

const series = (surveys: readonly Survey[], events: Inspection["events"] = []) =>
  sinceLastRepair(inspection(surveys, {}, { events })).map(({ id }) => id);

describe("the surveys since the last repair", () => {
  it("are all where no repair is known of, in time", () => {
    const surveys = [survey("2026-02-01", "routine"), survey("2026-01-01", "routine")];
    expect(series(surveys)).toEqual(["2026-01-01", "2026-02-01"]);
  });

  it("begin after the last survey before a repair", () => {
    const surveys = [
      survey("2026-01-01", "routine"),
      survey("2026-02-01", "before-repair"),
      survey("2026-02-02", "running-in"),
      survey("2026-03-02", "running-in"),
    ];
    expect(series(surveys)).toEqual(["2026-02-02", "2026-03-02"]);
    expect(series(surveys.slice(0, 2))).toEqual([]);
  });

  it("begin with a survey after adjusting that follows one of another stage", () => {
    const surveys = [
      survey("2026-01-01", "after-repair"),
      survey("2026-02-01", "after-repair"),
      survey("2026-03-01", "after-adjusting"),
      survey("2026-04-01", "routine"),
    ];
    expect(series(surveys)).toEqual(["2026-03-01", "2026-04-01"]);
    expect(series(surveys.slice(0, 2))).toHaveLength(2);
  });

  it("begin after an event that changed something, and not after another", () => {
    const surveys = ["2026-01-01", "2026-02-01", "2026-03-01"].map((taken) => survey(taken, "routine"));
    expect(series(surveys, [{ date: "2026-02-01", kind: "parts-replaced", note: "" }])).toEqual([
      "2026-02-01",
      "2026-03-01",
    ]);
    expect(series(surveys, [{ date: "2026-02-10", kind: "other", note: "" }])).toHaveLength(3);
  });
});

describe("the times of a history", () => {
  it("are hours of use where every survey has them", () => {
    const surveys = [survey("2026-01-01", "routine", 10), survey("2026-02-01", "routine", 80)];
    expect(timesOf(surveys)).toEqual({ by: "hours", times: [10, 80] });
  });

  it.each([
    ["one lacks them", [survey("2026-01-01", "routine", 10), survey("2026-01-11", "routine")]],
    ["they run backwards", [survey("2026-01-01", "routine", 10), survey("2026-01-11", "routine", 5)]],
  ])("are days where %s", (_, surveys) => {
    const { by, times } = timesOf(surveys);
    expect(by).toBe("date");
    expect((times[1] ?? 0) - (times[0] ?? 0)).toBe(10);
  });
});
