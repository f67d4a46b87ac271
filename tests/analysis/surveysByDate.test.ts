import { describe, expect, it } from "vitest";
import { hasReadings, surveysByDate } from "../../src/analysis/surveysByDate.ts";
import { pushPull } from "./examples.ts";

const taken = (id: string, when: string) => pushPull([], { id, taken: when });

describe("surveys in time", () => {
  it("stand from the first taken to the last, those of one time in their order, and as they were before", () => {
    const surveys = [
      taken("c", "2026-03-14T15:00"),
      taken("d", "2027-01-02"),
      taken("a", "2026-03-13"),
      taken("b", "2026-03-14T15:00"),
      taken("e", "2026-03-14T09:30"),
    ];
    expect(surveysByDate(surveys).map(({ id }) => id)).toEqual(["a", "e", "c", "b", "d"]);
    expect(surveys.map(({ id }) => id)).toEqual(["c", "d", "a", "b", "e"]);
  });
});

describe("a survey that is read", () => {
  const struck = { position: 0, backlash: 0.2, excluded: "bumped" };

  it("holds a reading that counts", () => {
    expect(hasReadings(pushPull([[0, 0.2]]))).toBe(true);
    expect(hasReadings(pushPull([], { readings: [struck, { position: 0, backlash: 0.2 }] }))).toBe(true);
  });

  it("is not one that was only prepared, nor one whose readings are all struck", () => {
    expect(hasReadings(pushPull([]))).toBe(false);
    expect(hasReadings(pushPull([], { readings: [struck, struck] }))).toBe(false);
  });
});
