import { describe, expect, it } from "vitest";
import { doneBetween } from "../../../src/analysis/comparison/done.ts";
import type { Inspection, Stage } from "../../../src/inspection/schema.ts";
import { pushPull } from "../examples.ts";
import { inspection } from "./slides.ts";

const before = pushPull([[0, 0.2]], { id: "before", taken: "2026-03-02", stage: "before-repair" });
const after = (stage: Stage) => pushPull([[0, 0.1]], { id: "after", taken: "2026-03-04", stage });
const event = (date: string, kind: "adjusted" | "parts-replaced" | "other") => ({ date, kind, note: "" });

function done(stage: Stage, ...events: NonNullable<Inspection["events"]>) {
  const [from, to] = [before, after(stage)];
  return doneBetween(inspection([from, to], {}, { events }), from, to);
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
});
