import { describe, expect, it } from "vitest";
import { SCATTER_STEPS, scatterGrid } from "../../../src/analysis/profile/noise.ts";

const grid = () => scatterGrid({ resolution: 0.01 });
const effects = () => [...new Set(grid().map(({ tau }) => tau))];
const ofEffect = (tau: number) => grid().filter((scatter) => scatter.tau === tau);
const total = (logs: readonly { readonly logPrior: number }[]) =>
  logs.reduce((sum, { logPrior }) => sum + Math.exp(logPrior), 0);

describe("what is known of scatter beforehand", () => {
  it("is a distribution: its chances sum to 1", () => {
    expect(total(grid())).toBeCloseTo(1, 12);
  });

  it("is that stations add nothing in 88 of 100 cases, else a few thousandths of a millimetre", () => {
    expect(effects()).toEqual([0, 0.003, 0.009]);
    [0.88, 0.07, 0.05].forEach((chance, i) => {
      expect(total(ofEffect(effects()[i]))).toBeCloseTo(chance, 12);
    });
  });

  it("has repeatability about a third of the graduation, alike either way in the logarithm", () => {
    for (const tau of effects()) {
      const row = ofEffect(tau);
      const middle = (row.length - 1) / 2;
      expect(row[middle].sigma).toBeCloseTo(0.0033, 12);
      row.forEach(({ sigma, logPrior }, i) => {
        const opposite = row[row.length - 1 - i];
        expect(sigma * opposite.sigma).toBeCloseTo(0.0033 ** 2, 12);
        expect(logPrior).toBeCloseTo(opposite.logPrior, 12);
      });
    }
  });

  it("is lognormal, with a deviation of a half, over 2.4 deviations", () => {
    const row = ofEffect(0);
    const [least] = row;
    const middle = row[(row.length - 1) / 2];
    expect(Math.log(middle.sigma / least.sigma)).toBeCloseTo(2.4 * 0.5, 12);
    for (const { sigma, logPrior } of row) {
      const deviations = Math.log(sigma / middle.sigma) / 0.5;
      expect(logPrior - middle.logPrior).toBeCloseTo(-0.5 * deviations ** 2, 12);
    }
    row.slice(1).forEach(({ sigma }, i) => {
      expect(sigma / row[i].sigma).toBeCloseTo(row[1].sigma / row[0].sigma, 12);
    });
  });

  it("does not shrink with a graduation finer than 0.008 mm, which hands and stand do not repeat to", () => {
    const sigmas = (resolution: number) => scatterGrid({ resolution }).map(({ sigma }) => sigma);
    expect(sigmas(0.001)).toEqual(sigmas(0.008));
    expect(sigmas(0.016)[0] / sigmas(0.008)[0]).toBeCloseTo(2, 12);
  });
});

describe("a step to a neighbouring scatter", () => {
  it("changes repeatability or station effect by one, either way", () => {
    const row = ofEffect(0).length;
    const at = row + (row - 1) / 2;
    const neighbours = SCATTER_STEPS.map((step) => grid()[at + step]);
    const { sigma, tau } = grid()[at];
    expect(neighbours.filter((each) => each.tau === tau)).toEqual([grid()[at + 1], grid()[at - 1]]);
    const others = neighbours.filter((each) => each.tau !== tau);
    expect(others.map((each) => each.tau).sort()).toEqual([0, 0.009]);
    for (const other of others) expect(other.sigma).toBeCloseTo(sigma, 12);
  });
});
