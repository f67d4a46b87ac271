import { describe, expect, it } from "vitest";
import { mergeInspections } from "../../src/inspection/mergeInspections.ts";
import { inspectionOf, pushPull } from "../analysis/examples.ts";

const before = inspectionOf(pushPull([[0, 0.254]], { id: "before" }));
const after = inspectionOf(pushPull([[0, 0.1]], { id: "after" }));

describe("inspections of one slide", () => {
  it("are one, with the surveys and the events of all", () => {
    const event = { date: "2026-03-15", kind: "adjusted", note: "" } as const;
    const joined = mergeInspections([{ ...before, events: [event] }, after]);
    expect(joined.ok && joined.value.surveys.map(({ id }) => id)).toEqual(["before", "after"]);
    expect(joined.ok && joined.value.events).toEqual([event]);
  });

  it("come in the unit of the last", () => {
    const inInches = { ...after, slide: { ...after.slide, units: "in" as const } };
    const joined = mergeInspections([before, inInches]);
    expect(joined.ok && joined.value.surveys[0]?.readings[0]).toMatchObject({ backlash: 0.01 });
  });

  it("are refused where one is of another slide, both named with the reason", () => {
    const other = inspectionOf(pushPull([[0, 0.1]], { id: "after" }), { id: "saddle", name: "Saddle" });
    const joined = mergeInspections([before, other]);
    expect(joined).toMatchObject({
      ok: false,
      problem: { what: expect.stringMatching(/Cross slide.*Saddle/) },
    });
  });

  it("are refused where two surveys have one id", () => {
    expect(mergeInspections([before, before])).toMatchObject({
      ok: false,
      problem: { where: 'survey "before"', what: expect.stringContaining("two surveys") },
    });
  });
});
