import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { assessSurvey, assessWithDraws } from "../../../src/analysis/assess.ts";
import type { Assessment } from "../../../src/analysis/assessment.ts";
import { settingsOf } from "../../../src/analysis/decide/settings.ts";
import {
  type RetainedDraws,
  readingsKey,
  type WhatIfSettings,
  whatIf,
} from "../../../src/analysis/decide/whatIf.ts";
import { lengthsIn } from "../../../src/inspection/lengths.ts";
import { slideInMillimetres } from "../../../src/inspection/metric.ts";
import { openInspection } from "../../../src/inspection/open.ts";
import type { Inspection, Slide } from "../../../src/inspection/schema.ts";
import { inspectionOf, pushPull } from "../examples.ts";
import { ADJUST, SURVEY } from "../knownDraws.ts";

const PLACES = Array.from({ length: 13 }, (_, i) => 25 * i);
const FLAT = [0.23, 0.22, 0.23, 0.23, 0.22, 0.23, 0.24, 0.23, 0.22, 0.23, 0.23, 0.22, 0.23];
const GIVEN = { indicator: { resolution: 0.01 }, endFloat: [0.02, 0.02] };

const flat = (change: (value: number, i: number) => number = (value) => value) =>
  PLACES.map((position, i) => [position, change(FLAT[i], i)] as const);
const high = flat((value, i) => (i === 5 ? 0.53 : value));

/** Surveys in which a change of settings can bring out outliers, unread ends or the end float. */
const SURVEYS: Readonly<Record<string, Inspection>> = {
  "an uneven screw": inspectionOf(
    pushPull([...flat((value, i) => value - 0.01 * i), ...flat((value, i) => value - 0.01 * i)], GIVEN),
  ),
  "end float not measured": inspectionOf(
    pushPull([...flat(), ...flat()], { indicator: { resolution: 0.01 } }),
  ),
  "a reading that disagrees with its repeat": inspectionOf(
    pushPull([...flat(), ...high.toReversed()], GIVEN),
  ),
  "a single reading that stands out": inspectionOf(pushPull(high, GIVEN)),
  "single readings that stand out, one of them an outlier": inspectionOf(
    pushPull(
      flat((value, i) => (i === 4 ? 0.9 : i === 9 ? value + 0.12 : value)),
      GIVEN,
    ),
  ),
  "unread ends": inspectionOf(pushPull([...flat().slice(2, 11), ...flat().slice(2, 11)], GIVEN)),
  "a slip": inspectionOf(
    pushPull(
      [...flat(), ...flat().toReversed(), ...flat((value, i) => (i === 4 ? 10 * value : value))],
      GIVEN,
    ),
  ),
  "a nut that cannot be adjusted": inspectionOf(pushPull([...flat(), ...flat()], GIVEN), {
    nut: { engagedLength: 24, adjustable: false },
  }),
  "a slide in inches": {
    ...inspectionOf(pushPull([], {}), {
      units: "in",
      travel: { from: 0, to: 12 },
      screw: { lead: 0.2 },
      nut: { engagedLength: 1 },
      backlashLimit: 0.006,
    }),
    surveys: [
      pushPull(
        [...flat(), ...flat()].map(([position, value]) => [position / 25, Math.round(value * 40) / 1000]),
        { indicator: { resolution: 0.001 } },
      ),
    ],
  },
  ...samples(),
};

function samples(): Readonly<Record<string, Inspection>> {
  const folder = new URL("../../../sample-data/", import.meta.url);
  const files = readdirSync(folder).filter((file) =>
    /^(adjust|correct|measure|no-verdict|positioning).*json$/.test(file),
  );
  return Object.fromEntries(
    files.map((file) => {
      const opened = openInspection(readFileSync(new URL(file, folder), "utf8"));
      if (!opened.ok) throw new Error(opened.problem.what);
      return [file, opened.value];
    }),
  );
}

/** Limit, running clearance and take-up left in the slide's unit, from nothing sensible to plenty; 0.001 mm apart. */
const CHANGES = fc.record({
  limit: fc.integer({ min: 20, max: 700 }),
  runningClearance: fc.integer({ min: 0, max: 100 }),
  takeUpLeft: fc.option(fc.integer({ min: 0, max: 500 })),
});

/** The slide with other settings, and the settings as the analysis has them. */
function changed(
  slide: Slide,
  change: { limit: number; runningClearance: number; takeUpLeft: number | null },
) {
  const scale = slide.units === "in" ? 25_400 : 1000;
  const { takeUpLeft: _before, ...nut } = slide.nut ?? {};
  const other: Slide = {
    ...slide,
    backlashLimit: change.limit / scale,
    runningClearance: change.runningClearance / scale,
    nut: change.takeUpLeft === null ? nut : { ...nut, takeUpLeft: change.takeUpLeft / scale },
  };
  const { limit, runningClearance, takeUpLeft } = settingsOf(
    slideInMillimetres(other),
    lengthsIn(slide.units),
  ).settings;
  return { slide: other, settings: { limit, runningClearance, takeUpLeft } satisfies WhatIfSettings };
}

/** What is retained, as another thread receives it. */
function retainedOf(inspection: Inspection): RetainedDraws {
  const assessed = assessWithDraws(inspection, inspection.surveys[0].id);
  if (!assessed.ok) throw new Error(assessed.problem.what);
  return structuredClone(assessed.value.retainedDraws());
}

function assessedAt(inspection: Inspection): Assessment {
  const outcome = assessSurvey(inspection, inspection.surveys[0].id);
  if (!outcome.ok) throw new Error(outcome.problem.what);
  return outcome.value;
}

/** A note says what scatter could hide at the limit that was assessed. */
const withoutNotes = ({ checks }: Pick<Assessment, "checks">) =>
  checks.filter(({ severity }) => severity !== "note");

describe("the decision with other settings", () => {
  it.each(Object.entries(SURVEYS))("equals a full assessment with these settings: %s", (_, inspection) => {
    const retained = retainedOf(inspection);
    fc.assert(
      fc.property(CHANGES, (change) => {
        const { slide, settings } = changed(inspection.slide, change);
        const full = assessedAt({ ...inspection, slide });
        const { checks, ...answer } = whatIf(retained, settings, lengthsIn(slide.units, full.resolution));
        expect(full).toMatchObject(answer);
        expect(withoutNotes({ checks })).toEqual(withoutNotes(full));
      }),
      { numRuns: 4, seed: 14253, endOnFailure: true },
    );
  });
});

describe("the decision from known draws with other settings", () => {
  const retainedAt = (backlashLimit: number): RetainedDraws => {
    const outcome = assessWithDraws(inspectionOf(SURVEY, { backlashLimit }), SURVEY.id, ADJUST);
    if (!outcome.ok) throw new Error(outcome.problem.what);
    return outcome.value.retainedDraws();
  };
  const USUAL = { runningClearance: 0.025, takeUpLeft: Number.POSITIVE_INFINITY };
  const unattainable = (was: number, limit: number) =>
    whatIf(retainedAt(was), { ...USUAL, limit }, lengthsIn("mm", 0.01)).checks.filter(
      ({ check }) => check === "limit not attainable",
    ).length;

  it("reports an unattainable limit by the new limit, not by the old one", () => {
    expect(unattainable(0.03, 0.15)).toBe(0);
    expect(unattainable(0.15, 0.03)).toBe(1);
    expect(unattainable(0.03, 0.02)).toBe(1);
  });

  it("throws if a subset of the readings is needed that was not sampled", () => {
    const [{ readings }] = retainedAt(0.15).stations;
    const changed = { ...retainedAt(0.15), toConfirm: readings };
    expect(() => whatIf(changed, { ...USUAL, limit: 0.15 }, lengthsIn("mm", 0.01))).toThrow(
      "These readings were not sampled by themselves.",
    );
  });
});

describe("the key of some readings", () => {
  it("differs for different readings, however their places in the file are written", () => {
    const named = (...all: readonly (readonly number[])[]) =>
      readingsKey(all.map((from) => ({ position: 0, value: 0.2, from })));
    const names = [named([1], [2]), named([1, 2]), named([12]), named([1]), named([2], [1]), named()];
    expect(new Set(names).size).toBe(names.length);
    expect(named([1, 4], [2])).toBe(named([1, 4], [2]));
  });
});
