import { describe, expect, it } from "vitest";
import type { PlannableSlide } from "../../../src/inspection/plannableSlide.ts";
import { logSheet } from "../../../src/report/plan/logSheet.ts";
import type { LostMotionMethod } from "../../../src/report/plan/method.ts";
import { BARE, planned } from "./planned.ts";

const sheetOf = (slide: PlannableSlide = BARE, method: LostMotionMethod = "push-pull"): string =>
  logSheet(slide, planned(slide), method);

const count = (text: string, part: string): number => text.split(part).length - 1;

describe("the log sheet", () => {
  it("is one document without scripts and without anything from elsewhere", () => {
    const sheet = sheetOf();
    expect(sheet.startsWith("<!doctype html>")).toBe(true);
    expect(sheet).not.toMatch(/<script|<link|<img|<iframe|@import|url\(|\ssrc=|\shref=|\son\w+=/i);
  });

  it("has no page size of its own, and no colour", () => {
    const sheet = sheetOf();
    expect(/@page\s*{([^}]*)}/.exec(sheet)?.[1]).not.toMatch(/size/);
    const greys = [...sheet.matchAll(/#([0-9a-f]{3,6})\b/gi)].map(([, digits]) => new Set(digits).size);
    expect(greys.length).toBeGreaterThan(2);
    expect(Math.max(...greys)).toBe(1);
  });

  it.each([
    ["push-pull", ["lost motion"]],
    ["indicator-pair", ["advancing", "retracting"]],
    ["dial-pair", ["advancing", "retracting"]],
  ] as const)("has a box for every figure of %s, numbered in order", (method, columns) => {
    const sheet = sheetOf(BARE, method);
    for (const column of columns) expect(count(sheet, `>${column}</th>`)).toBe(2);
    const { readings, stations } = planned(BARE);
    const numbers = [...sheet.matchAll(/class="order">(\d+)</g)].map(([, number]) => Number(number));
    expect([...numbers].sort((a, b) => a - b)).toEqual(readings.map((_, index) => index + 1));
    // Row by row: the way out counts up, the way back ends in the first row.
    expect(numbers.slice(0, 2)).toEqual([1, readings.length]);
    expect(numbers.slice(-2)).toEqual([stations.length, stations.length + 1]);
  });

  it("has the second round under a title of its own, its order going on from the first", () => {
    const slide = { ...BARE, travel: { from: 0, to: 300 } };
    const { readings, rounds } = planned(slide);
    const sheet = sheetOf(slide);
    const numbers = [...sheet.matchAll(/class="order">(\d+)</g)].map(([, number]) => Number(number));
    expect(numbers.toSorted((a, b) => a - b)).toEqual(readings.map((_, index) => index + 1));
    const [, second] = sheet.split("Second round, if");
    const first = rounds[0].length;
    expect(/class="right">(\d+)<[\s\S]*?class="order">(\d+)</.exec(second ?? "")?.slice(1)).toEqual([
      "1",
      String(readings.length),
    ]);
    expect(second).toContain(`class="right">${first + 1}<`);
  });

  it("asks for the dial's data where the dial is read, and for drive play where it is part of a reading", () => {
    const asked = (method: LostMotionMethod) => {
      const sheet = sheetOf(BARE, method);
      return [sheet.includes("graduated on diameter"), sheet.includes("Drive play")];
    };
    expect(asked("push-pull")).toEqual([false, false]);
    expect(asked("indicator-pair")).toEqual([false, true]);
    expect(asked("dial-pair")).toEqual([true, true]);
  });

  it("has end float measured before the readings, and a place for the indicator's data", () => {
    const sheet = sheetOf();
    const parts = ["1. Set up", "2. End float", "3. Instruments", "4. Readings"].map((part) =>
      sheet.indexOf(part),
    );
    expect(parts).not.toContain(-1);
    expect(parts).toEqual([...parts].sort((a, b) => a - b));
    for (const datum of ["Resolution", "Limit of error", "Hysteresis", "Angle to the travel"])
      expect(sheet).toContain(`<span>${datum}`);
  });

  it("leaves a line for what is not known, and fills in what is", () => {
    const blank = (sheet: string, name: string) =>
      sheet.includes(`<span>${name}</span><span class="rule"></span>`);
    const bare = sheetOf();
    for (const name of ["Slide", "Machine", "Date", "Read by"]) expect(blank(bare, name)).toBe(true);
    const known = sheetOf({ ...BARE, name: "Cross slide", machine: "Lathe no. 2" });
    for (const name of ["Slide", "Machine"]) expect(blank(known, name)).toBe(false);
    for (const name of ["Date", "Read by"]) expect(blank(known, name)).toBe(true);
  });

  it("takes no name for markup", () => {
    const sheet = sheetOf({ ...BARE, name: '<b onload="x">&' });
    expect(sheet).not.toContain("<b onload");
    expect(sheet).toContain("&lt;b onload=&quot;x&quot;&gt;&amp;");
  });

  it("warns of a screw that holds up a load", () => {
    expect(sheetOf({ ...BARE, holdsLoad: true })).toContain("safety part");
    expect(sheetOf()).not.toContain("safety part");
  });

  it("tells what too few stations cost", () => {
    expect(logSheet(BARE, planned(BARE, { stations: 3 }), "push-pull")).toContain("fewer than 5 stations");
  });
});
