import { describe, expect, it } from "vitest";
import type { AssessedSurvey } from "../../../src/analysis/assess.ts";
import { compareSurveys } from "../../../src/analysis/comparison/compareSurveys.ts";
import { failed, succeeded } from "../../../src/inspection/problem.ts";
import { drawn } from "./drawn.ts";
import { compared, inspection, level, worn } from "./slides.ts";

const AFTER = { taken: "2026-03-20", stage: "after-adjusting" } as const;

describe("two surveys of lost motion that is the same everywhere", () => {
  const both = () => compared([level("before", 0.3), level("after", 0.1, AFTER)]);

  it("differ by the difference of their readings, in the uniform part and all along the travel", () => {
    const { change, difference, sameEverywhere } = both();
    expect(change.uniform.value).toBeCloseTo(-0.2, 2.5);
    expect(change.uniform.low).toBeLessThan(-0.2);
    expect(change.uniform.high).toBeGreaterThan(-0.2);
    expect(difference.map(({ position }) => position)).toHaveLength(101);
    for (const { change, low, high } of difference) {
      expect(change).toBeCloseTo(-0.2, 2.3);
      expect(low).toBeLessThanOrEqual(change);
      expect(high).toBeGreaterThanOrEqual(change);
    }
    expect(sameEverywhere).toBe(true);
  });

  it("show no change of the uneven part", () => {
    const { change } = both();
    expect(change.uneven.low).toBeLessThanOrEqual(0);
    expect(change.uneven.high).toBeGreaterThanOrEqual(0);
  });

  it("leave end float out of what changed in nut and screw", () => {
    const { change } = both();
    expect(change.endFloat?.value).toBeCloseTo(0, 2.5);
    expect(change.uniformLessEndFloat?.value).toBeCloseTo(-0.2, 2);
  });

  it("prove that a limit well above is kept", () => {
    expect(both().acceptance).toMatchObject({ conformance: "proven", withheld: null, limit: 0.15 });
  });
});

describe("a comparison", () => {
  it("finds the uneven part still there that adjusting leaves", () => {
    const { change, to } = compared([worn("before", 0.25, 0.1), worn("after", 0.05, 0.1, AFTER)]);
    expect(to.assessment.uneven.low).toBeGreaterThan(0.05);
    expect(change.uneven.low).toBeLessThan(0);
    expect(change.uneven.high).toBeGreaterThan(0);
    expect(change.uniform.value).toBeCloseTo(-0.2, 1.9);
  });

  it("finds the change not the same everywhere where the screw was remade", () => {
    const found = compared([worn("before", 0.15, 0.15), level("after", 0.05, AFTER)]);
    expect(found.sameEverywhere).toBe(false);
    expect(found.change.uneven.high).toBeLessThan(-0.1);
  });

  it("disproves that a limit well below is kept", () => {
    const { acceptance } = compared([level("before", 0.3), level("after", 0.28, AFTER)]);
    expect(acceptance.conformance).toBe("disproven");
    expect(acceptance.chance).toBeLessThan(0.01);
  });

  it("is not told of end float that was not measured both times", () => {
    const { change, notes } = compared([level("before", 0.3, { endFloat: [] }), level("after", 0.1, AFTER)]);
    expect([change.endFloat, change.uniformLessEndFloat]).toEqual([null, null]);
    expect(notes.join()).toContain('End float was not measured in "before"');
  });

  it("takes drive play off pairs that are compared with readings that do not carry it", () => {
    const readings = level("after", 0.15).readings.map((each) => ({
      position: Number(each.position),
      advancing: 0.5,
      retracting: Number((0.5 - Number(each.backlash)).toFixed(3)),
    }));
    const pairs = level("after", 0, { ...AFTER, method: "indicator-pair", readings, drivePlay: 0.05 });
    expect(compared([level("before", 0.1), pairs]).change.uniform.value).toBeCloseTo(0, 2.3);
    const { drivePlay: _, ...silent } = pairs;
    const unstated = compared([level("before", 0.1), silent]);
    expect(unstated.change.uniform.value).toBeCloseTo(0.05, 2.3);
    expect(unstated.notes.join()).toContain("was not stated");
  });

  it("is the same in either unit", () => {
    const millimetres = inspection([level("before", 0.254), level("after", 0.127, AFTER)]);
    const inch = (value: unknown): number => Number((Number(value) / 25.4).toPrecision(12));
    const { slide } = millimetres;
    const inches = {
      ...millimetres,
      slide: {
        ...slide,
        units: "in" as const,
        travel: { from: 0, to: inch(300) },
        screw: { lead: inch(4) },
        nut: { engagedLength: inch(24) },
        backlashLimit: inch(0.15),
      },
      surveys: millimetres.surveys.map((survey) => ({
        ...survey,
        indicator: { resolution: inch(0.001) },
        endFloat: [inch(0.01), inch(0.01)],
        readings: survey.readings.map(({ position, backlash }) => ({
          position: inch(position),
          backlash: inch(backlash),
        })),
      })),
    };
    const [one, other] = [millimetres, inches].map((each) => compareSurveys(each));
    expect(one?.ok && one.value.change.uniform.value).toBeCloseTo(
      (other?.ok && other.value.change.uniform.value) || 0,
      4,
    );
  });

  it("of the same surveys is the same again", () => {
    const surveys = [level("before", 0.3), level("after", 0.1, AFTER)];
    expect(compared(surveys)).toEqual(compared(surveys));
  });

  it("fails where a survey holds no readings", () => {
    const outcome = compareSurveys(
      inspection([level("before", 0.3), level("after", 0.1, { readings: [] })]),
      { to: "after" },
    );
    expect(outcome).toMatchObject({ ok: false, problem: { where: 'survey "after"' } });
  });
});

describe("two surveys whose draws are known", () => {
  const surveys = [level("before", 0.3), level("after", 0.1, AFTER)] as const;
  /** Even but for the middle, where lost motion is greatest; a graduation beside it, and drive play of pairs. */
  const survey = (at: 0 | 1, part: Partial<AssessedSurvey>, resolution: number, ofPairs: number) => {
    const drivePlay = part.asPairs ? ofPairs : 0;
    const [tight, loose] = at === 0 ? [0.3, 0.4] : [0.1, 0.15];
    const known = drawn([0, 150, 300], [[tight, loose, tight]], surveys[at], part);
    return { ...known, assessment: { ...known.assessment, resolution, drivePlay } };
  };
  const known = (from: Partial<AssessedSurvey> = {}, to: Partial<AssessedSurvey> = {}, finer = 0.001) => {
    const both = { before: survey(0, from, 0.01, 0.02), after: survey(1, to, finer, 0.05) };
    const outcome = compareSurveys(inspection(surveys), {}, (_, id) =>
      id === "before" || id === "after" ? succeeded(both[id]) : failed("", "there is none", ""),
    );
    if (!outcome.ok) throw new Error(outcome.problem.what);
    return outcome.value;
  };
  const endFloat = (measured: boolean, value: number) => ({
    endFloat: { measured, draws: Float64Array.of(value) },
  });

  it("differ by the differences of the draws", () => {
    const { change, difference, acceptance, from, to } = known(endFloat(true, 0.03), endFloat(true, 0.01));
    expect(change.uniform.value).toBeCloseTo(-0.2, 12);
    expect(change.uneven.value).toBeCloseTo(-0.05, 12);
    expect(change.greatest.value).toBeCloseTo(-0.25, 12);
    expect(change.endFloat?.value).toBeCloseTo(-0.02, 12);
    expect(change.uniformLessEndFloat?.value).toBeCloseTo(-0.18, 12);
    expect(difference[0].change).toBeCloseTo(-0.2, 12);
    expect(difference[50].change).toBeCloseTo(-0.25, 12);
    expect(acceptance.greatest.value).toBeCloseTo(0.15, 12);
    expect(from).toMatchObject({ id: "before", taken: "2026-03-14", stage: "before-repair" });
    expect(to).toMatchObject({ id: "after", ...AFTER });
  });

  it.each([
    [true, false, -0.2 + 0.02],
    [false, true, -0.2 - 0.05],
    [true, true, -0.2],
    [false, false, -0.2],
  ])("have drive play taken off where only one survey carries it (%s, %s)", (before, after, uniform) => {
    const { change } = known({ asPairs: before }, { asPairs: after });
    expect(change.uniform.value).toBeCloseTo(uniform, 12);
    expect(change.uneven.value).toBeCloseTo(-0.05, 12);
  });

  it.each([
    [true, false],
    [false, true],
  ])("say nothing of end float that was measured once (%s, %s)", (before, after) => {
    const { change } = known(endFloat(before, 0.03), endFloat(after, 0.01));
    expect([change.endFloat, change.uniformLessEndFloat]).toEqual([null, null]);
  });

  it("are told by the coarser of their graduations", () => {
    expect(known().resolution).toBe(0.01);
    expect(known({}, {}, 0.02).resolution).toBe(0.02);
  });

  it.each(["before", "after"])("are not compared where that of %s cannot be assessed", (broken) => {
    const outcome = compareSurveys(inspection(surveys), {}, (_, id) =>
      id === broken ? failed("", `"${id}" is not read`, "") : succeeded(survey(0, {}, 0.01, 0)),
    );
    expect(outcome).toMatchObject({ ok: false, problem: { what: `"${broken}" is not read` } });
  });
});
