import { expect, test } from "vitest";
import type { GivenVerdict, Inspection, SlideEvent, Survey } from "../../src/inspection/schema.ts";
import { timelineOf } from "../../src/inspection/timeline.ts";

const survey = (id: string, taken: string, stage: Survey["stage"]): Survey => ({
  id,
  taken,
  stage,
  method: "push-pull",
  readings: [],
});

const event = (date: string, note: string): SlideEvent => ({ date, kind: "adjusted", note });

const given = (on: string, verdict: string): GivenVerdict => ({
  survey: on,
  given: "2026-03-15",
  version: "0.1.0",
  verdict,
  chance: null,
  summary: "",
});

const slide: Inspection["slide"] = {
  id: "saddle",
  name: "Saddle",
  units: "mm",
  travel: { from: 0, to: 160 },
  screw: { lead: 4 },
  backlashLimit: 0.15,
};

const order = (surveys: readonly Survey[], events: readonly SlideEvent[]): readonly string[] =>
  timelineOf({ format: "tightspot-inspection", version: 1, slide, surveys, events }).map((entry) =>
    entry.of === "event" ? entry.event.note : entry.survey.id,
  );

test("surveys and events stand in the order of their days, whatever their order in the file", () => {
  const surveys = [survey("third", "2026-05-01", "routine"), survey("first", "2025-12-31", "routine")];
  expect(order(surveys, [event("2026-01-02", "second"), event("2026-06-01", "fourth")])).toEqual([
    "first",
    "second",
    "third",
    "fourth",
  ]);
});

test("on one day a repair stands between the surveys before and after it", () => {
  const day = "2026-05-01";
  const surveys = [survey("after", day, "after-adjusting"), survey("before", day, "before-repair")];
  expect(order(surveys, [event(day, "adjusted")])).toEqual(["before", "adjusted", "after"]);
});

test("times within a day count where both have one", () => {
  const events = [event("2026-05-01T15:00", "afternoon"), event("2026-05-01T08:00", "morning")];
  expect(order([], events)).toEqual(["morning", "afternoon"]);
});

test("each survey has the verdicts that were given on it, in the order in which they were given", () => {
  const verdicts = [given("a", "measure-more"), given("b", "leave-alone"), given("a", "adjust-nut")];
  const surveys = [survey("a", "2026-03-01", "routine"), survey("b", "2026-03-02", "routine")];
  const entries = timelineOf({ format: "tightspot-inspection", version: 1, slide, surveys, verdicts });
  expect(
    entries.map((entry) => entry.of === "survey" && entry.verdicts.map(({ verdict }) => verdict)),
  ).toEqual([["measure-more", "adjust-nut"], ["leave-alone"]]);
});
