import { type Fit, logNormalPosterior, logPosterior, type State, shapeOf } from "./fit.ts";
import { SCATTER_STEPS } from "./noise.ts";
import { along, byCharacter, EVEN, resample } from "./temper.ts";

const SWEEPS = 6;

/**
 * States drawn with rounding taken as normal, weighed by readings' rounding as it really is, then moved by
 * Metropolis steps until they have settled.
 */
export function settle(start: readonly State[], fit: Fit): readonly State[] {
  const { random } = fit;
  const weighed = start.map((state) => ({ ...state, log: logPosterior(state, fit) }));
  const logWeights = weighed.map((state) => state.log - logNormalPosterior(state, fit));
  const greatest = logWeights.reduce((most, log) => Math.max(most, log), Number.NEGATIVE_INFINITY);
  const weights = logWeights.map((log) => Math.exp(log - greatest));
  const states = resample(weighed, weights, start.length, random);
  for (let sweep = 0; sweep < SWEEPS; sweep++) {
    const kin = byCharacter(states);
    for (let i = 0; i < states.length; i++) {
      const moved = moveOf(states[i], kin[states[i].character], fit);
      if (moved === undefined) continue;
      const log = logPosterior(moved, fit);
      if (Math.log(1 - random()) < log - states[i].log) states[i] = { ...moved, log };
    }
  }
  return states;
}

/** A move of the noise, of level and depth, or of all numbers at once; undefined where the prior forbids it. */
function moveOf(state: State, kin: readonly State[], fit: Fit): State | undefined {
  const choice = fit.random();
  if (choice < 0.25) return ofScatter(ofLevel(state, fit), fit);
  return choice < 0.6 || state.character === EVEN ? ofLevel(state, fit) : ofWear(state, kin, fit);
}

function ofScatter(state: State | undefined, fit: Fit): State | undefined {
  if (state === undefined) return undefined;
  const scatter = state.scatter + SCATTER_STEPS[Math.floor(fit.random() * SCATTER_STEPS.length)];
  return scatter < 0 || scatter >= fit.grid.length ? undefined : { ...state, scatter };
}

/** Level and depth trade against each other, so half of the moves keep their sum. */
function ofLevel(state: State, { grid, random, normal }: Fit): State | undefined {
  const size = grid[state.scatter].sigma * Math.exp(1.2 * normal() - 0.7);
  const change = size * normal();
  const level = state.level + change;
  if (state.character === EVEN) return { ...state, level };
  const depth = state.depth + (random() < 0.5 ? -change : 0) + 0.5 * size * normal();
  return depth < 0 ? undefined : { ...state, level, depth };
}

function ofWear(state: State, kin: readonly State[], fit: Fit): State | undefined {
  const { random, normal, grid } = fit;
  const a = kin[Math.floor(random() * kin.length)];
  const b = kin[Math.floor(random() * kin.length)];
  const { size, values } = along(state.u, a.u, b.u, 2, random, normal);
  if (values === undefined) return undefined;
  const blur = 0.05 * grid[state.scatter].sigma;
  const level = state.level + size * (a.level - b.level) + blur * normal();
  const depth = state.depth + size * (a.depth - b.depth) + blur * normal();
  if (depth < 0) return undefined;
  const moved = { ...state, u: values, level, depth };
  return { ...moved, shape: shapeOf(moved, fit) };
}
