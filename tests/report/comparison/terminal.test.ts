import { describe, expect, it } from "vitest";
import { type Compared, comparedOf } from "../../../src/report/comparison/compared.ts";
import { comparisonText } from "../../../src/report/comparison/terminal.ts";
import { exampleInspection } from "../exampleInspection.ts";
import { exampleComparison, exampleRunningIn } from "./exampleComparison.ts";

const text = (units: "mm" | "in" = "mm", history: Compared["history"] = exampleRunningIn()): string =>
  comparisonText(
    "x.json",
    comparedOf(exampleInspection({ units }), { comparison: exampleComparison(), history }),
  );

describe("a comparison on a terminal", () => {
  it.each(["mm", "in"] as const)("keeps within 80 columns in %s", (units) => {
    for (const line of text(units).split("\n")) expect([...line].length).toBeLessThanOrEqual(80);
  });

  it("names both surveys, then says what changed, by number and by place, and how it runs in", () => {
    const order = [
      '"before" (2026-03-02, before repair) against "after" (2026-03-04, after',
      "BEFORE AND AFTER",
      "Taking up the nut removed 0.08 mm",
      "The chance that it is kept: less than 1 in 100.",
      "\nCautions",
      "\nThe figures, each with its 95 % interval",
      "\nLost motion along the travel (mm)",
      "\nRunning in",
      "\nAssumed",
    ];
    const places = order.map((words) => text().indexOf(words));
    expect(places).not.toContain(-1);
    expect(places).toEqual(places.toSorted((a, b) => a - b));
  });

  it("gives each figure before, after and as a change, with its interval", () => {
    expect(text().replaceAll(/\s+/g, " ")).toContain(
      "Uniform part before 0.11 mm, give or take 0.01; after 0.03 mm, give or take 0.01; change 0.08 mm less, give or take 0.01",
    );
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
