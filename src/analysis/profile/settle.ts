import { type Fit, logNormalPosterior, logPosterior, type State, shapeOf } from "./fit.ts";
import { SCATTER_STEPS } from "./noise.ts";
import { along, byCharacter, EVEN, resample } from "./temper.ts";

const SWEEPS = 5;

/**
 * States drawn with rounding taken as normal, weighed by readings' rounding as it really is, then moved by
 * Metropolis steps until they have settled.
 */
export function settle(start: readonly State[], fit: Fit): readonly State[] {
  const { random } = fit;
  const logs = start.map((state) => logPosterior(state, fit));
  const logWeights = start.map((state, i) => logs[i] - logNormalPosterior(state, fit));
  const greatest = logWeights.reduce((most, log) => Math.max(most, log), Number.NEGATIVE_INFINITY);
  const weights = logWeights.map((log) => Math.exp(log - greatest));
  const chosen = resample(
    start.map((_, i) => i),
    weights,
    start.length,
    random,
  );
  const states = chosen.map((i) => start[i]);
  const now = chosen.map((i) => logs[i]);
  for (let sweep = 0; sweep < SWEEPS; sweep++) {
    const kin = byCharacter(states);
    for (let i = 0; i < states.length; i++) {
      const moved = moveOf(states[i], kin[states[i].character], fit);
      if (moved === undefined) continue;
      const log = logPosterior(moved, fit);
      if (log < now[i] && 1 - random() >= Math.exp(log - now[i])) continue;
      states[i] = moved;
      now[i] = log;
    }
  }
  return states;
}

/** A move of the scatter, of level and depth, or of all numbers at once; undefined where the prior forbids it. */
function moveOf(state: State, kin: readonly State[], fit: Fit): State | undefined {
  const choice = fit.random();
  if (choice < 0.2) return ofScatter(state, fit);
  return choice < 0.6 || state.character === EVEN ? ofLevel(state, fit) : ofWear(state, kin, fit);
}

function ofScatter({ character, u, shape, level, depth, scatter }: State, fit: Fit): State | undefined {
  const next = scatter + SCATTER_STEPS[Math.floor(fit.random() * SCATTER_STEPS.length)];
  const known = next >= 0 && next < fit.grid.length;
  return known ? { character, u, shape, level, depth, scatter: next } : undefined;
}

/** Level and depth trade against each other, so half of the moves keep their sum. */
function ofLevel(state: State, { grid, random, normal }: Fit): State | undefined {
  const { character, u, shape, scatter } = state;
  const size = grid[scatter].sigma * Math.exp(1.2 * normal() - 0.7);
  const change = size * normal();
  const level = state.level + change;
  if (character === EVEN) return { character, u, shape, level, depth: 0, scatter };
  const depth = state.depth + (random() < 0.5 ? -change : 0) + 0.5 * size * normal();
  return depth < 0 ? undefined : { character, u, shape, level, depth, scatter };
}

function ofWear(state: State, kin: readonly State[], fit: Fit): State | undefined {
  const { random, normal, grid } = fit;
  const { character, scatter } = state;
  const a = kin[Math.floor(random() * kin.length)];
  const b = kin[Math.floor(random() * kin.length)];
  const u = new Float64Array(state.u.length);
  const size = along(state.u, a.u, b.u, 2, u, random, normal);
  if (size === undefined) return undefined;
  const blur = 0.05 * grid[scatter].sigma;
  const level = state.level + size * (a.level - b.level) + blur * normal();
  const depth = state.depth + size * (a.depth - b.depth) + blur * normal();
  if (depth < 0) return undefined;
  return { character, u, shape: shapeOf({ character, u }, fit), level, depth, scatter };
}
