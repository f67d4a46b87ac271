import { describe, expect, it } from "vitest";
import { normals, seededRandom } from "../../src/analysis/random.ts";
import { assessed, inspectionOf, pushPull } from "./examples.ts";

const TRAVEL = 300;
const normal = normals(seededRandom(7));

/** A log of so many readings along the travel, whose scatter wanders slowly, as a slide's drag does. */
function log(count: number) {
  let wander = 0;
  return Array.from({ length: count }, (_, i) => {
    wander = 0.999 * wander + 0.0002 * normal();
    const position = (TRAVEL * i) / (count - 1);
    return [position, Math.round((0.2 + wander + 0.003 * normal()) * 1000) / 1000] as const;
  });
}

const GIVEN = { indicator: { resolution: 0.001 }, endFloat: [0.01, 0.01] };

describe("a log from an indicator's cable", () => {
  it("counts as one reading for each short stretch, and says so", () => {
    const { stations, assumed } = assessed(inspectionOf(pushPull(log(20_000), GIVEN)));
    expect(stations.length).toBeGreaterThan(50);
    expect(stations.length).toBeLessThan(120);
    expect(stations.every(({ readings }) => readings.length === 1)).toBe(true);
    expect(assumed.join(" ")).toMatch(/The 20000 readings of the log count as \d+/);
  });

  it("does not shrink its interval as if neighbouring readings were independent", () => {
    const width = (count: number): number => {
      const { uniform } = assessed(inspectionOf(pushPull(log(count), GIVEN)));
      return uniform.high - uniform.low;
    };
    // A hundred times as many independent readings would make the interval ten times narrower.
    expect(width(1_000) / width(100_000)).toBeLessThan(4);
  });

  it("leaves a survey by hand as it is", () => {
    const { stations, assumed } = assessed(inspectionOf(pushPull(log(100), GIVEN)));
    expect(stations).toHaveLength(100);
    expect(assumed.join(" ")).not.toContain("log");
  });
});
