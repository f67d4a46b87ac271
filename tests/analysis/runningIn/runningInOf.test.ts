import { describe, expect, it } from "vitest";
import type { RunningIn } from "../../../src/analysis/runningIn/runningIn.ts";
import { runningInOf } from "../../../src/analysis/runningIn/runningInOf.ts";
import { succeeded } from "../../../src/inspection/problem.ts";
import type { Survey } from "../../../src/inspection/schema.ts";
import { drawn } from "../comparison/drawn.ts";
import { inspection, level } from "../comparison/slides.ts";
import { SETTINGS } from "../examples.ts";

const HOURS = [0, 100, 200, 300, 400];

/** Surveys at so many hours of use, of lost motion that is the same everywhere. */
function surveys(backlash: (hours: number) => number, part: Partial<Survey> = {}): readonly Survey[] {
  return HOURS.map((hoursOfUse) =>
    level(`${hoursOfUse}`, backlash(hoursOfUse), { hoursOfUse, stage: "running-in", ...part }),
  );
}

function history(each: readonly Survey[], backlashLimit = 0.15): RunningIn {
  const outcome = runningInOf(inspection(each, { backlashLimit }));
  if (!outcome.ok) throw new Error(outcome.problem.what);
  if (!("trend" in outcome.value)) throw new Error("There are surveys enough.");
  return outcome.value;
}

describe("running in", () => {
  it("finds steady growth and when it comes to the limit", () => {
    // 0.05 mm + 0.02 mm in each hundred hours: 0.15 mm at 500 hours.
    const found = history(surveys((hours) => 0.05 + 0.0002 * hours));
    expect(found.by).toBe("hours");
    expect(found.growth.value).toBeCloseTo(0.08, 2.3);
    expect(found.likeliest).toBe("steady");
    expect(found.limitReached.value).toBeGreaterThan(440);
    expect(found.limitReached.value).toBeLessThan(520);
    expect(found.limitReached.high ?? 0).toBeGreaterThan(500);
    expect(found.lookAgain.at).toBeLessThan(500);
    expect(found.trend[0]?.at).toBe(0);
    expect(found.trend.at(-1)?.at).toBe(800);
  });

  it("tells the trend along the hours, wherever they begin, and twice as far as it was watched", () => {
    // The same machine with 1000 hours behind it; three surveys, no more.
    const later = [0, 200, 400].map((hours) =>
      level(`${hours}`, 0.05 + 0.0002 * hours, { hoursOfUse: 1000 + hours, stage: "running-in" }),
    );
    const { trend, growth, surveys: points, limitReached } = history(later);
    expect(points.map(({ at }) => at)).toEqual([1000, 1200, 1400]);
    expect(trend[0].at).toBe(1000);
    expect(trend.at(-1)?.at).toBe(1800);
    const at = (hours: number) => trend.find((point) => point.at === hours);
    expect(at(1000)?.uniform).toBeCloseTo(0.05, 2);
    expect(at(1200)?.uniform).toBeCloseTo(0.09, 2);
    expect(at(1400)?.uniform).toBeCloseTo(0.13, 2);
    expect(at(1200)?.low).toBeLessThan(0.09);
    expect(at(1200)?.high).toBeGreaterThan(0.09);
    expect(growth.value).toBeCloseTo(0.08, 2);
    expect(limitReached.value ?? 0).toBeGreaterThan(1400);
  });

  it("scatters no more than its surveys are apart from the course, and by the coarsest indicator's graduation", () => {
    const each = surveys((hours) => 0.05 + 0.0002 * hours).map((survey, i) => ({
      ...survey,
      indicator: { resolution: i === 1 ? 0.005 : 0.001 },
    }));
    const { scatter, resolution } = history(each);
    expect(resolution).toBe(0.005);
    expect(scatter).toBeGreaterThan(0);
    expect(scatter).toBeLessThan(0.02);
  });

  it("counts a survey by an indicator that errs more for less", () => {
    // The third survey lies 0.03 mm above the straight course of the others.
    const off = (error: number): RunningIn =>
      history(
        surveys((hours) => 0.05 + (hours === 200 ? 0.03 : 0)).map((survey) => ({
          ...survey,
          indicator: {
            resolution: 0.001,
            name: survey.id,
            ...(survey.id === "200" ? { error, hysteresis: error } : {}),
          },
        })),
      );
    const lift = ({ trend }: RunningIn): number => trend.find(({ at }) => at === 200)?.uniform ?? 0;
    expect(lift(off(0.1))).toBeLessThan(lift(off(0)) - 0.001);
    expect(lift(off(0.1))).toBeCloseTo(0.05, 2);
  });

  it("finds no growth where there is none, and no date", () => {
    const found = history(surveys(() => 0.05));
    expect(found.chances.constant).toBeGreaterThan(0.4);
    expect(found.growth.low).toBeLessThan(0.002);
    expect(found.limitReached.value).toBe(null);
    expect(found.lookAgain).toEqual({ at: 800, why: "watched" });
  });

  it("tells of a limit that is reached already", () => {
    const found = history(surveys(() => 0.2));
    expect(found.limitReached.chanceAlready).toBe(1);
    expect(found.lookAgain).toEqual({ at: 400, why: "now" });
  });

  it("lets the error of one indicator move the whole trend, and that of several each survey", () => {
    const indicator = { resolution: 0.001, error: 0.01 };
    const grown = (name: (survey: Survey) => string): RunningIn =>
      history(
        surveys((hours) => 0.05 + 0.0002 * hours).map((survey) => ({
          ...survey,
          indicator: { ...indicator, name: name(survey) },
        })),
      );
    const one = grown(() => "no. 4").growth;
    const several = grown(({ id }) => id).growth;
    expect(one.high - one.low).toBeLessThan(0.75 * (several.high - several.low));
  });

  it.each([
    ["two surveys", surveys(() => 0.05).slice(0, 2), { surveys: 2, why: "surveys" }],
    [
      "surveys at two times",
      surveys(() => 0.05).map((survey, i) => ({ ...survey, hoursOfUse: i < 3 ? 10 : 20 })),
      { surveys: 5, why: "times" },
    ],
  ])("is not told from %s", (_, each, expected) => {
    expect(runningInOf(inspection(each))).toEqual({ ok: true, value: expected });
  });

  it("passes over a survey that was only prepared", () => {
    const found = history(
      surveys(() => 0.05).map((survey) => (survey.id === "400" ? { ...survey, readings: [] } : survey)),
    );
    expect(found.surveys.map(({ survey }) => survey)).toEqual(["0", "100", "200", "300"]);
  });

  it("fails where readings come to no lost motion", () => {
    const [first, ...others] = surveys(() => 0.05);
    const alone = level("alone", 0, {
      stage: "running-in",
      method: "positioning",
      hoursOfUse: first?.hoursOfUse,
      readings: [{ target: 0, direction: "advancing", reading: 0, run: 1 }],
    });
    expect(runningInOf(inspection([alone, ...others])).ok).toBe(false);
  });
});

describe("running in, where what each survey comes to is known", () => {
  interface Known {
    readonly values?: readonly number[];
    /** Half of the uniform part's 95 % interval, in standard deviations of a normal distribution. */
    readonly deviation?: number;
    readonly greatest?: readonly number[];
    readonly indicator?: (index: number) => Survey["indicator"];
    readonly uneven?: readonly number[];
  }
  const VALUES = [0.05, 0.06, 0.07, 0.085, 0.09];

  function known({
    values = VALUES,
    deviation = 0.002,
    greatest = values.map((value) => 2 * value),
    indicator = () => undefined,
    uneven = [0.02],
  }: Known): RunningIn {
    const series = values.map((value, i) =>
      level(`${i}`, value, { hoursOfUse: 100 * i, stage: "running-in", indicator: indicator(i) }),
    );
    const outcome = runningInOf(inspection(series), (_, id) => {
      const [i, value] = [Number(id), values[Number(id)]];
      const each = drawn(
        [0, 150, 300],
        uneven.map((more) => [value, value + more, value]),
        series[i],
      );
      const half = 1.96 * deviation;
      const estimates = {
        uniform: { value, low: value - half, high: value + half },
        greatest: { value: greatest[i], low: greatest[i], high: greatest[i] },
      };
      return succeeded({ ...each, assessment: { ...each.assessment, ...estimates } });
    });
    if (!outcome.ok || !("trend" in outcome.value)) throw new Error("There are surveys enough.");
    return outcome.value;
  }

  const close = (value: number) => expect.closeTo(value, 9);
  const alike = ({ growth, scatter, trend, chances }: RunningIn) => ({
    growth: [growth.value, growth.low, growth.high].map(close),
    scatter: close(scatter),
    trend: trend.map(({ at, uniform, low, high }) => [close(at), close(uniform), close(low), close(high)]),
    chances: Object.values(chances).map(close),
  });
  const plain = ({ growth, scatter, trend, chances }: RunningIn) => ({
    growth: [growth.value, growth.low, growth.high],
    scatter,
    trend: trend.map(({ at, uniform, low, high }) => [at, uniform, low, high]),
    chances: Object.values(chances),
  });

  it("takes an indicator's error for a deviation of each survey, as the GUM has rectangles", () => {
    // The uniform part is half of the greatest lost motion, and so is its share of the error.
    const together = Math.hypot(0.002, 0.01 / 2 / Math.sqrt(3), 0.004 / Math.sqrt(12));
    const expected = alike(known({ deviation: together }));
    const indicator = { error: 0.01, hysteresis: 0.004 };
    expect(plain(known({ indicator: () => indicator }))).toEqual(expected);
    // Neither is it one indicator where only some surveys name the last one's.
    const named = known({ indicator: (i) => ({ ...indicator, name: i === 1 ? "b" : "a" }) });
    expect(plain(named)).toEqual(expected);
    const onlyHysteresis = known({ indicator: () => ({ hysteresis: 0.004 }) });
    expect(plain(onlyHysteresis)).toEqual(
      alike(known({ deviation: Math.hypot(0.002, 0.004 / Math.sqrt(12)) })),
    );
    const nothingRead = known({ indicator: () => ({ error: 0.01 }), greatest: VALUES.map(() => 0) });
    expect(plain(nothingRead)).toEqual(alike(known({})));
  });

  it("moves the whole course by the hysteresis of one indicator, and leaves its growth", () => {
    const one = known({ indicator: () => ({ name: "a", hysteresis: 0.02 }), deviation: 0 });
    const none = known({ indicator: () => ({ name: "a" }), deviation: 0 });
    expect(one.chances).toEqual(none.chances);
    expect(plain(one).growth).toEqual(alike(none).growth);
    // Anywhere within 0.01 mm to either side: 95 in 100 within 0.0095.
    const width = ({ trend: [{ low, high }] }: RunningIn) => high - low;
    expect(width(one)).toBeGreaterThan(Math.max(width(none), 2 * 0.0092));
    const steady = known({
      values: [0.05, 0.05, 0.05, 0.05],
      indicator: () => ({ name: "a", hysteresis: 0.1 }),
    });
    expect(width(steady) / (2 * 0.0475)).toBeCloseTo(1, 1);
  });

  it("scales the uneven part by the error of one indicator, at the greatest lost motion that any survey read", () => {
    const indicator = () => ({ name: "a", error: 0.04 });
    const { uneven } = known({ indicator, greatest: [0.1, 0.4, 0.1, 0.1, 0.1] });
    // A tenth to either side: 95 in 100 within 0.095.
    expect(uneven.value).toBeCloseTo(0.02, 3);
    expect(Math.abs(uneven.high - 0.02 / 0.905)).toBeLessThan(0.0001);
    expect(Math.abs(uneven.low - 0.02 / 1.095)).toBeLessThan(0.0001);
  });

  it("has the uneven part of the last survey's draws, each as often", () => {
    const { uneven, limit } = known({ uneven: [0.01, 0.03, 0.05] });
    expect([uneven.low, uneven.value, uneven.high]).toEqual([0.01, 0.03, 0.05].map(close));
    expect(limit).toBe(SETTINGS.limit);
  });

  it("is told of surveys that are as sure as can be", () => {
    const { growth, trend } = known({ values: [0.05, 0.05, 0.05], deviation: 0 });
    expect(growth.value).toBeCloseTo(0, 3);
    expect(trend.every(({ low, high }) => Number.isFinite(low) && Number.isFinite(high))).toBe(true);
  });
});
