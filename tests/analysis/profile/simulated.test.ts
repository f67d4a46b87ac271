import { beforeAll, describe, expect, it } from "vitest";
import type { Assessment, Estimate } from "../../../src/analysis/assessment.ts";
import { simulateSlide, type Truth } from "../../simulator/simulatedSlide.ts";
import { assessed } from "../examples.ts";

/** Slides whose truth is known, and what their surveys lead to. */
let cases: readonly { readonly truth: Truth; readonly assessment: Assessment }[];

beforeAll(() => {
  cases = Array.from({ length: 60 }, (_, i) => {
    const { inspection, truth } = simulateSlide(5000 + i);
    return { truth, assessment: assessed(inspection) };
  });
});

const holds = ({ low, high }: Estimate, value: number) => low - 1e-9 <= value && value <= high + 1e-9;
const share = (held: readonly boolean[]) => held.filter(Boolean).length / held.length;

describe("sixty simulated slides", () => {
  it("have the uniform part in its 95 % interval", () => {
    expect(
      share(cases.map(({ truth, assessment }) => holds(assessment.uniform, truth.uniform))),
    ).toBeGreaterThan(0.85);
  });

  it("have the uneven part in its 95 % interval, where it is more than scatter", () => {
    const uneven = cases.filter(({ truth }) => truth.uneven > 2 * truth.repeatability);
    expect(uneven.length).toBeGreaterThan(30);
    expect(
      share(uneven.map(({ truth, assessment }) => holds(assessment.uneven, truth.uneven))),
    ).toBeGreaterThan(0.85);
  });

  it("have the profile in its 95 % band along most of the travel", () => {
    const points = cases.flatMap(({ truth, assessment }) =>
      assessment.profile.map(({ position, low, high }) => {
        const backlash = truth.backlash(position);
        return low - 1e-9 <= backlash && backlash <= high + 1e-9;
      }),
    );
    expect(share(points)).toBeGreaterThan(0.9);
  });

  it("get a verdict in half of the cases or more, and a wrong one in no more than two", () => {
    const decided = cases.filter(({ assessment }) => assessment.verdict !== "measure-more");
    const wrong = decided.filter(({ truth, assessment }) => assessment.verdict !== truth.verdict);
    expect(decided.length).toBeGreaterThan(30);
    expect(wrong.length).toBeLessThanOrEqual(2);
  });

  it("are not claimed to be uneven where they are even", () => {
    const even = cases.filter(({ truth }) => truth.uneven < 1e-9);
    expect(even.length).toBeGreaterThan(5);
    expect(even.filter(({ assessment }) => assessment.unevenChance >= 0.95)).toEqual([]);
  });

  it("have the tight spot where lost motion really is least, within what scatter hides", () => {
    expect(
      share(
        cases.map(({ truth, assessment }) => {
          const there = truth.backlash(assessment.tightSpot.position);
          return there - truth.uniform <= 2 * truth.repeatability;
        }),
      ),
    ).toBeGreaterThan(0.85);
  });
});
