import { describe, expect, it } from "vitest";
import { threadSlip } from "../../../src/report/thread/threadSlip.ts";
import { threadText } from "../../../src/report/thread/threadText.ts";
import { EVERY_FORM, saidBy } from "./said.ts";

describe("the slip for the lathe", () => {
  it("holds what whoever cuts the thread needs", () => {
    const slip = threadSlip(
      saidBy("--form acme-29 --diameter 1 --per-inch 5 --class 2G --length 20 --material bronze"),
    ).replaceAll("\u00a0", " ");
    for (const part of [
      "1-5 Acme, single start, right hand",
      "0.8962 to 0.8924 in",
      "0.8726",
      "0.7509",
      "20 in",
      "bronze",
      "Passes on the screw",
      "<svg",
      "Isolate the machine",
      "Assumed",
    ])
      expect(slip).toContain(part);
  });

  it("gives the greater side clearance to the edge that leads, by the hand of the thread", () => {
    const clearances = (hand: string): readonly string[] =>
      [
        ...threadSlip(saidBy(`--form trapezoidal-30 --diameter 24 --pitch 5 --hand ${hand}`)).matchAll(
          /<dd>(-?[\d.]+)° side clearance/g,
        ),
      ].map(([, degrees]) => degrees ?? "");
    const [right, left] = [clearances("right"), clearances("left")];
    // 3° of working clearance: atan(5 ÷ 18.5 π) = 4.92° more on the leading edge, 3.79° less on the other.
    expect(right.slice(0, 2)).toEqual(["7.92", "-0.79"]);
    expect(left.slice(0, 2)).toEqual(["-0.79", "7.92"]);
  });

  it("leaves a line to write on for what is not known", () => {
    const slip = threadSlip(saidBy("--form square --diameter 24 --pitch 5"));
    expect(slip).toMatch(/Length of thread<\/dt><dd>_+</);
    expect(slip).toMatch(/Material as found<\/dt><dd>_+</);
  });

  it.each(EVERY_FORM)("and the words tell no number that is none: %s", (words) => {
    const said = saidBy(words);
    for (const text of [threadText(said), threadSlip(said)])
      expect(text).not.toMatch(/NaN|undefined|null|Infinity|\[object/);
  });
});
