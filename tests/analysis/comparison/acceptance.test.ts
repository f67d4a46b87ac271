import { describe, expect, it } from "vitest";
import type { AssessedSurvey } from "../../../src/analysis/assess.ts";
import type { Finding } from "../../../src/analysis/assessment.ts";
import { acceptanceOf } from "../../../src/analysis/comparison/acceptance.ts";
import { drawsOf, SETTINGS, WELL_COVERED } from "../examples.ts";
import { assess } from "../knownDraws.ts";

const STOP: Finding = { check: "slip", severity: "stop", message: "", readings: [] };

/** A survey that the rule of ISO 14253-1 finds to keep the limit, or to exceed it. */
function survey(
  conformance: "proven" | "disproven" | "not proven",
  part: Partial<AssessedSurvey["assessment"]> = {},
  coverage = WELL_COVERED,
): AssessedSurvey {
  return {
    assessment: { ...assess(), settings: SETTINGS, checks: [], conformance, ...part },
    coverage,
    asPairs: false,
    survey: { id: "after", taken: "2026-03-14", stage: "after-repair", method: "push-pull", readings: [] },
    profile: drawsOf([0, 300], [[0, 0]]),
    endFloat: { measured: false, draws: new Float64Array(1) },
  };
}

const below = Array.from({ length: 100 }, (_, i) => 0.1 + i * 1e-5);
const above = below.map((each) => each + 0.1);
/** Seven in a hundred above the limit of 0.15 mm. */
const mostlyBelow = [...below.slice(0, 93), ...above.slice(0, 7)];

describe("acceptance", () => {
  it("is proven or disproven where the standard's rule and the draws agree", () => {
    expect(acceptanceOf(survey("proven"), below)).toMatchObject({ conformance: "proven", chance: 1 });
    expect(acceptanceOf(survey("disproven"), above)).toMatchObject({ conformance: "disproven", chance: 0 });
  });

  it("is not proven where the draws do not bear the claim out", () => {
    expect(acceptanceOf(survey("proven"), mostlyBelow)).toMatchObject({
      conformance: "not proven",
      withheld: null,
      chance: 0.93,
    });
    expect(acceptanceOf(survey("not proven"), below).conformance).toBe("not proven");
  });

  it("asks of the draws that nineteen in twenty bear a claim out, those at the limit itself for it", () => {
    const within = (count: number): readonly number[] => [
      ...Array(count).fill(0.15),
      ...Array(100 - count).fill(0.16),
    ];
    expect(acceptanceOf(survey("proven"), within(95)).conformance).toBe("proven");
    expect(acceptanceOf(survey("proven"), within(94)).conformance).toBe("not proven");
    expect(acceptanceOf(survey("disproven"), within(5)).conformance).toBe("disproven");
    expect(acceptanceOf(survey("disproven"), within(6)).conformance).toBe("not proven");
  });

  it("tells the limit, and the greatest lost motion as median and interval of its draws", () => {
    const { limit, greatest } = acceptanceOf(survey("proven"), [0.1, 0.12, 0.14]);
    expect(limit).toBe(0.15);
    expect(greatest.value).toBe(0.12);
    expect(greatest.low).toBeCloseTo(0.101, 12);
    expect(greatest.high).toBeCloseTo(0.139, 12);
  });

  it("is held back by a check that stops the verdict, either way", () => {
    const checks = [STOP];
    expect(acceptanceOf(survey("proven", { checks }), below).withheld).toBe("checks");
    expect(acceptanceOf(survey("disproven", { checks }), above).conformance).toBe("not proven");
  });

  it("is held back by nothing where nothing is claimed, nor by a check that only warns", () => {
    const checks = [STOP];
    const settings = { ...SETTINGS, springHides: true };
    const few = { ...WELL_COVERED, enoughStations: false };
    expect(acceptanceOf(survey("not proven", { checks, settings }, few), below).withheld).toBe(null);
    const warned = survey("proven", { checks: [{ ...STOP, severity: "warning" }] });
    expect(acceptanceOf(warned, below)).toMatchObject({ conformance: "proven", withheld: null });
  });

  it("is held back by a stopping check among others", () => {
    const checks: readonly Finding[] = [{ ...STOP, severity: "warning" }, STOP];
    expect(acceptanceOf(survey("proven", { checks }), below).withheld).toBe("checks");
  });

  it("is not proven past a gap between stations, but disproven by one place alone", () => {
    const gappy = { ...WELL_COVERED, gaps: [{ from: 100, to: 200 }] };
    expect(acceptanceOf(survey("proven", {}, gappy), below).withheld).toBe("coverage");
    expect(acceptanceOf(survey("disproven", {}, gappy), above).conformance).toBe("disproven");
  });

  it("is not proven by too few stations, but disproven by them", () => {
    const few = { ...WELL_COVERED, enoughStations: false };
    expect(acceptanceOf(survey("proven", {}, few), below)).toMatchObject({
      conformance: "not proven",
      withheld: "coverage",
    });
    expect(acceptanceOf(survey("disproven", {}, few), above).conformance).toBe("disproven");
  });

  it("is not proven where a spring may hide the wear", () => {
    const settings = { ...SETTINGS, springHides: true };
    expect(acceptanceOf(survey("proven", { settings }), below).withheld).toBe("spring-loaded");
    expect(acceptanceOf(survey("disproven", { settings }), above).conformance).toBe("disproven");
  });
});
