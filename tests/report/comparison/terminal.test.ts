import { describe, expect, it } from "vitest";
import { comparisonText } from "../../../src/report/comparison/terminal.ts";
import { exampleInspection } from "../exampleInspection.ts";
import { exampleComparison, exampleRunningIn } from "./exampleComparison.ts";

const text = (
  units: "mm" | "in" = "mm",
  history: Parameters<typeof comparisonText>[2] = exampleRunningIn(),
) =>
  comparisonText("x.json", exampleComparison(), history, exampleInspection({ units }), [
    "The nut is adjustable.",
  ]);

describe("a comparison on a terminal", () => {
  it.each(["mm", "in"] as const)("keeps within 80 columns in %s", (units) => {
    for (const line of text(units).split("\n")) expect([...line].length).toBeLessThanOrEqual(80);
  });

  it("names both surveys, then says what changed, by number and by place, and how it runs in", () => {
    const order = [
      '"before" (2026-03-02, before repair) against "after" (2026-03-04, after',
      "BEFORE AND AFTER",
      "Taking up the nut removed 0.08 mm",
      "\nNumbers",
      "\nLost motion along the travel (mm)",
      "\nRunning in",
      "\nCautions",
      "\nAssumed",
    ];
    const places = order.map((words) => text().indexOf(words));
    expect(places).not.toContain(-1);
    expect(places).toEqual(places.toSorted((a, b) => a - b));
  });

  it("tells the profiles at places all along the travel", () => {
    // The bell of the example has its top at 110 mm: 0.30 mm at 113 mm, 0.22 after adjusting by 0.08.
    expect(text()).toMatch(/113 mm +0\.31 +0\.23 +-0\.08 +-0\.09 to -0\.07/);
    expect(text()).toMatch(/300 mm +0\.11 +0\.03 +-0\.08/);
  });

  it("says when a second survey is too little for a trend, and nothing of it after the first", () => {
    expect(text("mm", { surveys: 2, why: "surveys" })).toContain("A trend takes three surveys");
    expect(text("mm", { surveys: 1, why: "surveys" })).not.toContain("Running in");
  });
});
