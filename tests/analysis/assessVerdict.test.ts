import { describe, expect, it } from "vitest";
import { assess, model, SURVEY } from "./knownDraws.ts";

describe("slides that get no verdict", () => {
  it.each([
    ["holds up a load", { holdsLoad: true }, "holds-load"],
    ["has a nut whose spring may hide its wear", { nut: { kind: "spring-loaded" } }, "spring-loaded"],
    ["has a limit that perfect parts could not keep", { backlashLimit: 0.03 }, "limit-not-attainable"],
  ] as const)("get the numbers all the same: one that %s", (_, slide, reason) => {
    const assessment = assess(SURVEY, slide);
    expect(assessment.verdict).toBe("no-verdict");
    expect(assessment.reasons).toEqual([reason]);
    expect(assessment.chances).toBeNull();
    expect(assessment.likeliest).toBeNull();
    expect(assessment.nextReadings).toEqual([]);
    expect(assessment.uniform.value).toBeCloseTo(0.29, 9);
    expect(assessment.profile).toHaveLength(13);
  });

  it("do not include a spring-loaded nut whose spring was overcome", () => {
    const slide = { nut: { kind: "spring-loaded", engagedLength: 24 }, springOvercome: true } as const;
    expect(assess(SURVEY, slide).verdict).toBe("adjust-nut");
  });
});

describe("slides of which more must be measured", () => {
  it("have too few stations, or gaps", () => {
    const { verdict, reasons, likeliest } = assess({ ...SURVEY, readings: SURVEY.readings.slice(0, 4) });
    expect(verdict).toBe("measure-more");
    expect(reasons).toEqual(["coverage", "unread-end"]);
    expect(likeliest).toBe("adjust-nut");
    // Stations 50 mm apart leave 2 mm between them that a nut of 24 mm does not reach from either.
    const everyOther = SURVEY.readings.filter((_, i) => (i % 13) % 2 === 0);
    expect(assess({ ...SURVEY, readings: everyOther }).reasons).toEqual(["coverage"]);
  });

  it("have an unread end of the travel, which is asked for first", () => {
    const readings = SURVEY.readings.filter((_, i) => i % 13 !== 12);
    const slide = { nut: { engagedLength: 30 } };
    const { verdict, reasons, nextReadings } = assess({ ...SURVEY, readings }, slide);
    expect(verdict).toBe("measure-more");
    expect(reasons).toEqual(["unread-end"]);
    expect(nextReadings[0]).toMatchObject({ position: 300 });
  });

  it("have a reading that a check stops at", () => {
    const [first, ...others] = SURVEY.readings;
    const readings = [{ ...first, backlash: 3 }, ...others];
    const { verdict, reasons, checks } = assess({ ...SURVEY, readings });
    expect(verdict).toBe("measure-more");
    expect(reasons).toEqual(["checks"]);
    expect(checks.some(({ severity, readings: named }) => severity === "stop" && named.includes(0))).toBe(
      true,
    );
  });

  it("have draws that disagree, and get the reading that would tell most", () => {
    const split = model({ tight: 0.2, loose: 0.25 }, { tight: 0.2, loose: 0.4 }, { tight: 0.2, loose: 0.5 });
    const { verdict, reasons, likeliest, chances, nextReadings, canBeSettled } = assess(SURVEY, {}, split);
    expect(verdict).toBe("measure-more");
    expect(reasons).toEqual(["chances"]);
    expect(likeliest).toBe("remake-screw");
    expect(chances?.["remake-screw"]).toBeCloseTo(2 / 3, 12);
    expect(canBeSettled).toBe(true);
    expect(nextReadings[0]).toMatchObject({ position: 150 });
  });

  it("sit at the limit, where more readings would not settle it", () => {
    // What adjusting leaves is 0.149, 0.15 and 0.151 + a trace: the median margin is nothing.
    const atLimit = model(
      { tight: 0.2, loose: 0.314 },
      { tight: 0.2, loose: 0.315 },
      { tight: 0.2, loose: 0.3161 },
    );
    const { verdict, reasons, canBeSettled, nextReadings } = assess(SURVEY, {}, atLimit);
    expect(verdict).toBe("measure-more");
    expect(reasons).toEqual(["at-the-limit"]);
    expect(canBeSettled).toBe(false);
    expect(nextReadings).toEqual([]);
  });

  it("can be settled by readings that repeat well, and not by ones that scatter", () => {
    // The median margin is 0.005 mm; ten repeats of a coarser indicator could not tell it from nothing.
    const near = model(
      { tight: 0.2, loose: 0.309 },
      { tight: 0.2, loose: 0.31 },
      { tight: 0.2, loose: 0.32 },
    );
    const { indicator: _, ...survey } = SURVEY;
    const withStep = (resolution: number) => assess({ ...survey, indicator: { resolution } }, {}, near);
    // 1.65 × 0.01 / √12 = 0.0048; 1.65 × 0.011 / √12 = 0.0052.
    expect(withStep(0.01).reasons).toEqual(["chances"]);
    expect(withStep(0.011).reasons).toEqual(["at-the-limit"]);
  });
});
