import { describe, expect, it } from "vitest";
import { chooseSurveys, type SurveyChoice } from "../../../src/analysis/comparison/chooseSurveys.ts";
import type { Stage, Survey } from "../../../src/inspection/schema.ts";
import { pushPull } from "../examples.ts";
import { inspection } from "./slides.ts";

const survey = (id: string, taken: string, stage: Stage): Survey =>
  pushPull([[0, 0.1]], { id, taken, stage });

const HISTORY = [
  survey("latest", "2026-06-01", "running-in"),
  survey("first", "2026-01-01", "routine"),
  survey("worn", "2026-02-01", "before-repair"),
  survey("repaired", "2026-02-03", "after-repair"),
];

const chosen = (surveys: readonly Survey[], choice: SurveyChoice = {}) => {
  const outcome = chooseSurveys(inspection(surveys), choice);
  return outcome.ok ? [outcome.value.from, outcome.value.to] : outcome.problem;
};

describe("the surveys to compare", () => {
  it("are the latest and the last before the repair, in whatever order they stand", () => {
    expect(chosen(HISTORY)).toEqual(["worn", "latest"]);
  });

  it("are the first and the latest where none was taken before a repair", () => {
    expect(chosen(HISTORY.filter(({ stage }) => stage !== "before-repair"))).toEqual(["first", "latest"]);
  });

  it("are those that are named, also one of them", () => {
    expect(chosen(HISTORY, { from: "repaired", to: "first" })).toEqual(["repaired", "first"]);
    expect(chosen(HISTORY, { to: "repaired" })).toEqual(["worn", "repaired"]);
    expect(chosen(HISTORY, { to: "worn" })).toEqual(["first", "worn"]);
    expect(chosen(HISTORY, { from: "latest" })).toEqual(["latest", "repaired"]);
  });

  it("are not one taken before a later repair, where an earlier one is named", () => {
    const surveys = [
      survey("first", "2026-01-01", "routine"),
      survey("named", "2026-02-01", "routine"),
      survey("worn", "2026-03-01", "before-repair"),
    ];
    expect(chosen(surveys, { to: "named" })).toEqual(["first", "named"]);
    expect(chosen(surveys, { to: "first" })).toEqual(["named", "first"]);
  });

  it("are told, in the order they were taken, where one is named that is not there", () => {
    const cure = (surveys: readonly Survey[]) => chosen(surveys, { from: "other" });
    expect(cure(HISTORY)).toMatchObject({ cure: "Its surveys: first, worn, repaired, latest." });
    expect(cure([])).toMatchObject({ cure: "Its surveys: none." });
  });

  it("pass over a survey that was only prepared", () => {
    const prepared = { ...survey("next", "2026-09-01", "running-in"), readings: [] };
    expect(chosen([...HISTORY, prepared])).toEqual(["worn", "latest"]);
    expect(chosen([...HISTORY, prepared], { to: "next" })).toEqual(["worn", "next"]);
  });

  it.each([
    ["one that is not there", HISTORY, { to: "other" }, /no survey "other".*/],
    ["one with itself", HISTORY, { from: "worn", to: "worn" }, /with itself/],
    ["the only one there is", HISTORY.slice(0, 1), {}, /only one survey/],
    ["none", [], {}, /no surveys/],
  ])("are refused: %s", (_, surveys, choice, reason) => {
    expect(chosen(surveys, choice)).toMatchObject({ what: expect.stringMatching(reason) });
  });
});
