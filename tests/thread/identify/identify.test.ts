import { describe, expect, it } from "vitest";
import { normals, seededRandom } from "../../../src/analysis/statistics/random.ts";
import { candidatesWithin } from "../../../src/thread/identify/candidates.ts";
import { identify } from "../../../src/thread/identify/identify.ts";

const uncertainty = { outside: 0.05, distance: 0.2, angle: 1 };

function found(measured: Omit<Parameters<typeof identify>[0], "uncertainty">) {
  const made = identify({ ...measured, uncertainty });
  if (!made.ok) throw new Error(made.problem.what);
  return made.value;
}

describe("identifying a worn thread", () => {
  it("names the standard size, with its odds", () => {
    const { ranked, isSettled, fits } = found({ outside: 23.9, distance: 50.1, turns: 10, angle: 30 });
    expect(ranked[0]?.designation).toBe("Tr 24 × 5");
    expect([isSettled, fits]).toEqual([true, true]);
  });

  it("names an inch screw measured in millimetres", () => {
    const { ranked } = found({ outside: 31.6, distance: 50.7, turns: 10, angle: 29 });
    expect(ranked[0]?.designation).toBe("1 1/4-5 Acme");
  });

  it("finds an inch pitch on a metric diameter, and puts it apart from standard sizes", () => {
    const { ranked } = found({ outside: 30.96, distance: 101.6, turns: 16, angle: 29, root: 24.1 });
    const [first] = ranked;
    expect([first?.kind, first?.diameter, first?.pitch]).toEqual(["mixed", 31, 6.35]);
    expect(ranked.every(({ kind }) => kind !== "standard")).toBe(true);
  });

  it("says that it is not settled where two fit, and what to measure", () => {
    const close = found({ outside: 24.97, distance: 50.9, turns: 10 });
    expect(close.isSettled).toBe(false);
    expect(close.next?.measure).toBe("root");
    const pitches = found({ outside: 25.3, distance: 6.2, turns: 2, angle: 60 });
    expect(pitches.next).toMatchObject({ measure: "distance" });
    expect(Math.abs((pitches.next?.first ?? 0) - (pitches.next?.second ?? 0))).toBeGreaterThanOrEqual(0.6);
  });

  it("says that nothing fits where the pitch is none of either system", () => {
    expect(found({ outside: 24, distance: 147.5, turns: 25 }).fits).toBe(false);
  });

  it.each([
    [{ outside: 0, distance: 50, turns: 10 }, "outside"],
    [{ outside: 24, distance: 50, turns: 0 }, "turns"],
    [{ outside: 24, distance: 50, turns: 1 }, "over"],
  ])("refuses %o", (measured, where) => {
    const made = identify({ ...measured, uncertainty });
    expect(made.ok ? "" : made.problem.where).toBe(where);
  });

  it("puts the true thread first in 95 of 100 worn screws where it claims ten to one", () => {
    const random = seededRandom(17);
    const normal = normals(random);
    const all = candidatesWithin(10, 60).filter(({ pitch }) => pitch >= 1.5);
    const whole = all.reduce((sum, { weight }) => sum + weight, 0);
    let [claimed, right] = [0, 0];
    for (let trial = 0; trial < 400; trial++) {
      let place = random() * whole;
      const truth = all.find(({ weight }) => {
        place -= weight;
        return place <= 0;
      });
      if (truth === undefined) throw new Error("Nothing was drawn.");
      // Worn in another way than the program supposes: little on most screws, much on some.
      const worn = random() * (random() < 0.7 ? 0.15 : 0.6);
      const turns = Math.max(4, Math.round(80 / truth.pitch));
      const { ranked, isSettled } = found({
        outside: truth.diameter - worn + 0.025 * normal(),
        distance: Math.round((turns * truth.pitch + 0.1 * normal()) * 20) / 20,
        turns,
        ...(trial % 2 === 0 ? { angle: 2 * truth.form.halfAngle + 0.5 * normal() } : {}),
      });
      if (!isSettled) continue;
      claimed++;
      if (ranked[0]?.designation === truth.designation) right++;
    }
    expect(claimed).toBeGreaterThan(100);
    expect(right / claimed).toBeGreaterThanOrEqual(0.95);
  });
});
