import { describe, expect, it } from "vitest";
import { assessSurvey, assessWithDraws } from "../../src/analysis/assess.ts";
import type { ProfileData, ProfileModel } from "../../src/analysis/profile/draws.ts";
import type { Slide, Survey } from "../../src/inspection/schema.ts";
import { assessed, drawsOf, inspectionOf, pushPull, surveyOf } from "./examples.ts";
import { ADJUST, assess, model, POSITIONS, SURVEY } from "./knownDraws.ts";

function close(found: object, expected: Readonly<Record<string, number>>): void {
  expect(Object.keys(found).sort()).toEqual(Object.keys(expected).sort());
  for (const [key, value] of Object.entries(found)) expect(value, key).toBeCloseTo(expected[key], 5);
}

describe("the assessment of known draws", () => {
  it("tells uniform part, take-up and uneven part with their 95 % intervals", () => {
    const { uniform, takeUp, uneven, greatest, unevenChance, endFloat } = assess();
    // Of three draws the interval's ends lie a twentieth of the way from the outer to the middle one.
    close(uniform, { value: 0.29, low: 0.2805, high: 0.2995 });
    // Less 0.02 of end float and 0.025 of running clearance.
    close(takeUp, { value: 0.245, low: 0.2355, high: 0.2545 });
    close(uneven, { value: 0.04, low: 0.021, high: 0.059 });
    close(greatest, { value: 0.33, low: 0.3015, high: 0.3585 });
    expect(unevenChance).toBe(0.75);
    close(endFloat ?? {}, { value: 0.02, low: 0.02, high: 0.02 });
  });

  it("tells the profile's median and interval at every position, and its tight and loosest spot", () => {
    const { profile, tightSpot, loosestSpot } = assess();
    expect(profile.map(({ position }) => position)).toEqual(POSITIONS);
    close(profile[1], { position: 25, backlash: 0.29, low: 0.2805, high: 0.2995 });
    close(profile[6], { position: 150, backlash: 0.33, low: 0.3015, high: 0.3585 });
    close(tightSpot, { position: 25, backlash: 0.29 });
    close(loosestSpot, { position: 150, backlash: 0.33 });
  });

  it("tells what adjusting would leave: the uneven part, running clearance and attainable end float", () => {
    const { afterAdjusting, profileAfterAdjusting } = assess();
    expect(afterAdjusting.position).toBe(150);
    close(afterAdjusting.worst, { value: 0.04 + 0.035, low: 0.021 + 0.035, high: 0.059 + 0.035 });
    // Taken up: 0.245; end float of 0.02 brought to 0.01.
    expect(profileAfterAdjusting).toHaveLength(13);
    close(profileAfterAdjusting[1], { position: 25, backlash: 0.29 - 0.255 });
    close(profileAfterAdjusting[6], { position: 150, backlash: 0.33 - 0.255 });
  });

  it("tells what new nuts would leave, whatever the old one can still take up", () => {
    const { afterNewNuts } = assess(SURVEY, { nut: { engagedLength: 24, takeUpLeft: 0.1 } });
    expect(afterNewNuts.position).toBe(150);
    close(afterNewNuts.worst, { value: 0.04 + 0.035, low: 0.021 + 0.035, high: 0.059 + 0.035 });
  });

  it("leaves what the nut cannot take up", () => {
    const { afterAdjusting, profileAfterAdjusting } = assess(SURVEY, {
      nut: { engagedLength: 24, takeUpLeft: 0.1 },
    });
    // 0.33 less 0.02 of end float, less 0.1, and the end float of 0.01 that may stay.
    expect(afterAdjusting.worst.value).toBeCloseTo(0.22, 5);
    expect(profileAfterAdjusting[6].backlash).toBeCloseTo(0.33 - 0.1 - 0.01, 5);
  });

  it("decides by the draws, with their chances", () => {
    const { verdict, chances, likeliest, reasons, nextReadings, canBeSettled } = assess();
    expect(verdict).toBe("adjust-nut");
    expect(likeliest).toBe("adjust-nut");
    expect(reasons).toEqual([]);
    expect(chances).toEqual({
      "leave-alone": 0,
      "correct-end-float": 0,
      "adjust-nut": 1,
      "replace-nuts": 0,
      "remake-screw": 0,
    });
    expect(nextReadings).toEqual([]);
    expect(canBeSettled).toBe(true);
  });

  it("takes end float and drive play off before deciding", () => {
    // As found 0.155; the end float of 0.02 put right leaves 0.145.
    const { verdict } = assess(SURVEY, {}, model({ tight: 0.1, loose: 0.155 }, { tight: 0.1, loose: 0.155 }));
    expect(verdict).toBe("correct-end-float");
    const within = assess(SURVEY, {}, model({ tight: 0.1, loose: 0.149 }, { tight: 0.1, loose: 0.149 }));
    expect(within.verdict).toBe("leave-alone");
  });

  it("tells conformance from the median of the loosest spot and the budget's uncertainty", () => {
    expect(assess().conformance).toBe("disproven");
    expect(assess(SURVEY, { backlashLimit: 0.5 }).conformance).toBe("proven");
    // 0.33, with a standard deviation of 0.03: the guard band is 0.0495.
    expect(assess(SURVEY, { backlashLimit: 0.379 }).conformance).toBe("not proven");
    expect(assess(SURVEY, { backlashLimit: 0.38 }).conformance).toBe("proven");
    expect(assess(SURVEY, { backlashLimit: 0.281 }).conformance).toBe("not proven");
    expect(assess(SURVEY, { backlashLimit: 0.28 }).conformance).toBe("disproven");
    expect(assess().uncertainty.expanded).toBeCloseTo(0.06, 5);
    expect(assess().uncertainty.lines).toHaveLength(6);
  });

  it("looks for the loosest spot in the working range and for the tight spot in the whole travel", () => {
    const { loosestSpot, tightSpot, greatest } = assess(SURVEY, { workingRange: { from: 175, to: 300 } });
    expect(loosestSpot).toEqual({ position: 175, backlash: greatest.value });
    expect(tightSpot.position).toBe(25);
    const before = assess(SURVEY, { workingRange: { from: 0, to: 125 } });
    expect(before.loosestSpot.position).toBe(0);
    for (const workingRange of [
      { from: 150, to: 200 },
      { from: 100, to: 150 },
    ]) {
      expect(assess(SURVEY, { workingRange }).loosestSpot.position).toBe(150);
    }
  });

  it("tells the loosest spot by the middle of every draw's own greatest, wherever that lies", () => {
    const heights = (at150: number, at200: number, at225: number) =>
      POSITIONS.map((at) => ({ 150: at150, 200: at200, 225: at225 })[at] ?? 0.2);
    const profile: ProfileModel = () =>
      drawsOf(POSITIONS, [heights(0.3, 0.4, 0.2), heights(0.3, 0.2, 0.42), heights(0.31, 0.2, 0.2)]);
    const { loosestSpot, greatest } = assess(SURVEY, {}, profile);
    // The profile's middle is 0.3 mm at 150 mm and 0.2 mm elsewhere; the draws' greatest are 0.4, 0.42 and 0.31 mm.
    expect(loosestSpot).toEqual({ position: 150, backlash: 0.4 });
    expect(greatest.value).toBe(0.4);
  });

  it("has what it was asked of, and by which settings", () => {
    const { survey, settings, resolution, repeatability, stations, drivePlay } = assess();
    expect(survey).toBe("survey");
    expect(settings.limit).toBe(0.15);
    expect(settings.engagedLength).toBe(24);
    expect(resolution).toBe(1e-6);
    expect(repeatability).toBe(0);
    expect(stations).toHaveLength(13);
    expect(drivePlay).toBe(0);
  });

  it("tells the median of the draws' repeatability", () => {
    const profile: ProfileModel = () => {
      const draws = drawsOf(POSITIONS, Array(3).fill(POSITIONS.map(() => 0.3)));
      return {
        ...draws,
        draws: draws.draws.map((draw, i) => ({ ...draw, repeatability: [0.01, 0.002, 0.004][i] })),
      };
    };
    expect(assess(SURVEY, {}, profile).repeatability).toBe(0.004);
  });
});

describe("what the model of the profile is given", () => {
  function given(survey: Survey, slide: Partial<Slide> = {}): ProfileData {
    const seen: ProfileData[] = [];
    assessed(inspectionOf(survey, slide), (data, random) => {
      seen.push(data);
      return ADJUST(data, random);
    });
    return seen[0];
  }

  it("is the corrected stations and the slide, in millimetres", () => {
    const data = given(SURVEY, { workingRange: { from: 50, to: 250 } });
    expect(data.stations.map(({ position }) => position)).toEqual(POSITIONS);
    expect(data.stations.every(({ mean, readings }) => mean === 0.3 && readings.length === 2)).toBe(true);
    expect(data).toMatchObject({
      travel: { from: 0, to: 300 },
      workingRange: { from: 50, to: 250 },
      engagedLength: 24,
      limit: 0.15,
      resolution: 1e-6,
      roundings: 1,
    });
  });

  it("is the same for an inspection in inches", () => {
    const inches = pushPull([[1, 0.01]], { indicator: { resolution: 0.001 } });
    const data = given(inches, {
      units: "in",
      travel: { from: 0, to: 10 },
      nut: { engagedLength: 1 },
      backlashLimit: 0.005,
    });
    expect(data.travel.to).toBeCloseTo(254, 9);
    expect(data.engagedLength).toBeCloseTo(25.4, 9);
    expect(data.limit).toBeCloseTo(0.127, 9);
    expect(data.resolution).toBeCloseTo(0.0254, 9);
    expect(data.stations[0].position).toBeCloseTo(25.4, 9);
    expect(data.stations[0].mean).toBeCloseTo(0.254, 9);
  });

  it("counts both roundings of a pair", () => {
    const readings = POSITIONS.map((position) => ({ position, advancing: 0.5, retracting: 0.2 }));
    expect(given(surveyOf({ method: "indicator-pair", readings })).roundings).toBe(2);
  });

  it("is randomness of one seed, so that the same readings give the same answer", () => {
    const numbers: number[] = [];
    const watching: ProfileModel = (data, random) => {
      numbers.push(random());
      return ADJUST(data, random);
    };
    assess(SURVEY, {}, watching);
    assess(SURVEY, {}, watching);
    expect(numbers[0]).toBe(numbers[1]);
  });
});

describe("an assessment that cannot be given", () => {
  it("says which surveys there are", () => {
    const inspection = inspectionOf(SURVEY);
    const both = { ...inspection, surveys: [SURVEY, { ...SURVEY, id: "later" }] };
    expect(assessSurvey(both, "sooner")).toEqual({
      ok: false,
      problem: {
        where: "surveys",
        what: 'there is no survey "sooner"',
        cure: "Surveys in this inspection: survey, later.",
      },
    });
  });

  it("says that there are none", () => {
    const outcome = assessSurvey({ ...inspectionOf(SURVEY), surveys: [] }, "first");
    expect(outcome.ok ? "" : outcome.problem.cure).toBe("Surveys in this inspection: none.");
  });

  it("asks for readings where all are struck", () => {
    const readings = SURVEY.readings.map((reading) => ({ ...reading, excluded: "loose stand" }));
    expect(assessSurvey(inspectionOf({ ...SURVEY, readings }), "survey")).toEqual({
      ok: false,
      problem: {
        where: 'survey "survey"',
        what: "there are no readings to assess",
        cure: "Add readings; struck ones do not count.",
      },
    });
  });

  it("takes the survey that was asked for, not the first", () => {
    const inspection = inspectionOf(SURVEY);
    const later = { ...pushPull([[0, 0.1]]), id: "later" };
    const outcome = assessSurvey({ ...inspection, surveys: [SURVEY, later] }, "later", ADJUST);
    expect(outcome.ok && outcome.value.survey).toBe("later");
    expect(outcome.ok && outcome.value.stations).toHaveLength(1);
  });
});

describe("what the readings are about", () => {
  const pairs = surveyOf({
    method: "indicator-pair",
    indicator: { resolution: 1e-6 },
    endFloat: [0.02, 0.02],
    drivePlay: 0.03,
    readings: [...POSITIONS, ...POSITIONS].map((position) => ({ position, advancing: 0.5, retracting: 0.2 })),
  });

  it("takes drive play off pairs", () => {
    const { drivePlay, takeUp, afterAdjusting, profileAfterAdjusting } = assess(pairs);
    expect(drivePlay).toBe(0.03);
    expect(takeUp.value).toBeCloseTo(0.29 - 0.02 - 0.03 - 0.025, 5);
    expect(afterAdjusting.worst.value).toBeCloseTo(0.075, 5);
    expect(profileAfterAdjusting[6].backlash).toBeCloseTo(0.075, 5);
  });

  it("does not take drive play off sweeps, which do not carry it", () => {
    const { drivePlay, takeUp } = assess({ ...SURVEY, drivePlay: 0.03 });
    expect(drivePlay).toBe(0);
    expect(takeUp.value).toBeCloseTo(0.245, 5);
  });

  it("knows no drive play where none was stated", () => {
    const { drivePlay: _, ...unstated } = pairs;
    expect(assess(unstated).drivePlay).toBe(0);
  });

  it("has no estimate of end float that was not measured, and lets it be anywhere up to 0.1 mm", () => {
    const { endFloat: _, ...unmeasured } = SURVEY;
    const profile = model(...Array.from({ length: 400 }, () => ({ tight: 0.29, loose: 0.33 })));
    const { endFloat, takeUp } = assess(unmeasured, {}, profile);
    expect(endFloat).toBeNull();
    // Evenly spread over 0.1 mm: the median within four standard errors of 0.1 / (2 √400).
    expect(Math.abs(takeUp.value - (0.29 - 0.05 - 0.025))).toBeLessThan(0.01);
    expect(takeUp.high - takeUp.low).toBeGreaterThan(0.09);
    expect(takeUp.high).toBeLessThan(0.265);
  });

  it("tells worn zones from the resolution up", () => {
    const bump = model({ tight: 0.3, loose: 0.318 }, { tight: 0.3, loose: 0.318 });
    const withStep = (resolution: number) =>
      assess({ ...SURVEY, indicator: { resolution } }, {}, bump).wornZones;
    // Rises of 0.018 mm at 150 mm and of 0.009 mm beside it.
    expect(withStep(0.01)).toMatchObject([{ from: 150, to: 150, atLeast: 0.01 }]);
    expect(withStep(0.02)).toEqual([]);
  });

  it("tells what of the thread is left where its form was stated: half of a pitch of 4 mm", () => {
    const left = (form?: string) =>
      assess(SURVEY, { screw: { lead: 4, ...(form === undefined ? {} : { form }) } }).wornZones[0];
    expect(left().thicknessLeft).toBeNull();
    const { deepest, thicknessLeft } = left("trapezoidal-30");
    expect(thicknessLeft?.value).toBeCloseTo(1 - deepest.value / 2, 9);
  });

  it("gives no bound place by place for a nut of two halves", () => {
    const worn = (kind: "two-halves" | "closing") =>
      assess(SURVEY, { nut: { kind, engagedLength: 24 } }).wornZones;
    expect(worn("two-halves")).toEqual([]);
    expect(worn("closing").length).toBeGreaterThan(0);
  });
});

describe("readings that are judged by themselves", () => {
  it("are judged once, whoever asks, and kept for deciding anew", () => {
    // Each station read once, and one of them far above the others.
    const readings = POSITIONS.map((position) => [position, position === 150 ? 0.9 : 0.3] as const);
    const survey = pushPull(readings, { endFloat: [0.02, 0.02] });
    const judged: number[] = [];
    const outcome = assessWithDraws(inspectionOf(survey), survey.id, ({ stations }) => {
      judged.push(stations.length);
      const even = [0.3, 0.3];
      return drawsOf([0, 300], [even, even]);
    });
    if (!outcome.ok) throw new Error(outcome.problem.what);
    expect(judged).toEqual([13, 12]);
    const { subsets, toConfirm } = outcome.value.retainedDraws();
    expect(toConfirm.map(({ from }) => from)).toEqual([[6]]);
    expect([...subsets.keys()]).toEqual(["0,1,2,3,4,5,7,8,9,10,11,12"]);
    for (const { worst, tight, endFloat } of [...subsets.values()].flat()) {
      expect([worst, tight]).toEqual([0.3 - endFloat, 0.3 - endFloat]);
    }
    expect(judged).toEqual([13, 12]);
  });
});
