import { describe, expect, it } from "vitest";
import type { RunningIn } from "../../../src/analysis/runningIn/runningIn.ts";
import { runningInOf } from "../../../src/analysis/runningIn/runningInOf.ts";
import type { Survey } from "../../../src/inspection/schema.ts";
import { inspection, level } from "../comparison/slides.ts";

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
