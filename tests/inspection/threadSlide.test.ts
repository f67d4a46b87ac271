import { describe, expect, it } from "vitest";
import { surveyInMillimetres } from "../../src/inspection/metric.ts";
import { readInspection } from "../../src/inspection/open.ts";
import { openThreadSlide } from "../../src/inspection/threadSlide.ts";
import { exampleInspection } from "../report/exampleInspection.ts";

const THREAD = [
  { position: 0, thickness: 1.99 },
  { position: 110, overWires: 19.8, wire: 2.1 },
];

const inspection = (thread: unknown) => {
  const example = exampleInspection();
  return { ...example, surveys: example.surveys.map((survey) => ({ ...survey, thread })) };
};

describe("the thread measured in a survey", () => {
  it("is read with the file, and brought to millimetres with the rest", () => {
    const read = readInspection(inspection(THREAD));
    if (!read.ok) throw new Error(read.problem.what);
    const [survey] = read.value.surveys;
    if (survey === undefined) throw new Error("There is no survey.");
    expect(survey.thread).toEqual(THREAD);
    expect(surveyInMillimetres(survey, "in").thread).toEqual([
      { position: 0, thickness: 50.546 },
      { position: 2794, overWires: 502.92, wire: 53.34 },
    ]);
  });

  it.each([
    [[{ position: 0 }], "needs a thickness"],
    [[{ position: 0, thickness: 2, overWires: 20 }], "not both"],
    [[{ position: 0, thickness: -2 }], "greater than zero"],
  ])("is refused as %o", (thread, reason) => {
    const read = readInspection(inspection(thread));
    expect(read.ok ? "" : read.problem.where).toContain("surveys[0].thread[0]");
    expect(read.ok ? "" : read.problem.what).toContain(reason);
  });
});

describe("a file opened for its thread", () => {
  it("may lack all but the unit, and gives the latest thread that was measured", () => {
    const bare = openThreadSlide('{"format":"tightspot-inspection","version":1,"slide":{"units":"in"}}');
    expect(bare).toEqual({ ok: true, value: { units: "in", measured: [] } });
    const { surveys, ...rest } = inspection(THREAD);
    const later = surveys.map((survey) => ({
      ...survey,
      id: "later",
      taken: "2026-05-01",
      thread: [THREAD[0]],
    }));
    const opened = openThreadSlide(JSON.stringify({ ...rest, surveys: [...later, ...surveys] }));
    expect(opened.ok && opened.value.measured).toEqual([THREAD[0]]);
  });

  it("is refused where the screw is told in a way that it cannot be", () => {
    const opened = openThreadSlide(JSON.stringify(exampleInspection({ screw: { lead: -4 } })));
    expect(opened.ok ? "" : opened.problem.where).toBe("slide.screw.lead");
  });
});
