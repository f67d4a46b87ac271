import { describe, expect, it } from "vitest";
import { planText } from "../../../src/report/plan/planText.ts";
import { BARE, planned } from "./planned.ts";

const plan = planned(BARE);
const text = planText(BARE, plan, "push-pull", ["Readings are taken push–pull."]);

describe("a measuring plan on a terminal", () => {
  it("keeps within 80 columns", () => {
    const inInches = { ...BARE, units: "in", travel: { from: 0, to: 400 }, holdsLoad: true } as const;
    const both = planText(inInches, planned(inInches), "push-pull", []);
    expect(both).toContain("Second round, if the first leaves the verdict open\n");
    const few = planText(inInches, planned(inInches, { stations: 3 }), "dial-pair", []);
    for (const line of `${text}${both}${few}`.split("\n")) expect([...line].length).toBeLessThanOrEqual(80);
  });

  it("tells every station in order, with its unit", () => {
    const told = [...text.matchAll(/^ +(\d+) +([\d.]+) mm {2}\S/gm)].map(([, number, at]) => [number, at]);
    expect(told.map(([number]) => Number(number))).toEqual(plan.stations.map((_, index) => index + 1));
    expect(told.map(([, at]) => Number(at))).toEqual(plan.stations.map(({ position }) => position));
  });

  it("tells order, reasons, set-up with end float, the way of measuring, cautions and what was assumed", () => {
    const parts = ["Order", "Why", "Before the first reading", "Push–pull", "Cautions", "Assumed"];
    const places = parts.map((part) => text.indexOf(`\n\n${part}\n`));
    expect(places).not.toContain(-1);
    expect(places).toEqual([...places].sort((a, b) => a - b));
    expect(text).toContain("End float: ");
    expect(text).toContain("Readings are taken push–pull.");
    expect(text).not.toContain("falls short");
  });

  it("tells what too few stations cost", () => {
    const few = planText(BARE, planned(BARE, { stations: 4 }), "push-pull", []);
    expect(few).toMatch(/What it falls short of\n {2}- No verdict is given with fewer than 5/);
  });

  it("warns of a load, and of a spring that hides wear", () => {
    const knee = { ...BARE, holdsLoad: true, nut: { kind: "spring-loaded" } } as const;
    const told = planText(knee, planned(knee), "push-pull", []).replace(/\s+/g, " ");
    expect(told).toContain("A screw that holds up a load is a safety part");
    expect(told).toContain("exceeds the spring");
    expect(text).not.toContain("safety part");
  });
});
