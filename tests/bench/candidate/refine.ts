import type { Drawn } from "./evidence.ts";
import { SIGMAS } from "./noise.ts";
import { EVEN, type Posterior } from "./posterior.ts";
import { nextStep, propose, resample } from "./sampler.ts";
import type { State, States } from "./state.ts";

/** Share of the states that must still count when more of the exact likelihood is brought in. */
const KEPT = 0.5;
const SWEEPS = 2;
const LAST_SWEEPS = 3;

/**
 * From states drawn by the evidence, whose likelihood is normal and whose discrepancy does not yet obey the nut, to
 * the posterior as it is: the logarithm of the ratio of the two likelihoods is brought in by steps, chosen so that half
 * of the states still count, with Metropolis moves after each.
 */
export function refine(start: readonly State[], states: States, posterior: Posterior): readonly State[] {
  const { random } = posterior;
  let current = [...start];
  let share = 0;
  while (share < 1) {
    const logs = Float64Array.from(current, ({ logWeight }) => logWeight);
    const step = nextStep(logs, 1 - share, KEPT * current.length);
    const top = logs.reduce((most, log) => Math.max(most, log), Number.NEGATIVE_INFINITY);
    const chosen = resample(
      logs.map((log) => Math.exp(step * (log - top))),
      current.length,
      random,
    );
    current = Array.from(chosen, (i) => current[i]);
    share += step;
    const sweeps = share < 1 ? SWEEPS : LAST_SWEEPS;
    for (let sweep = 0; sweep < sweeps; sweep++) {
      const alike = sameShape(current);
      current.forEach((state, i) => {
        current[i] = moved(state, alike[state.shape], share, states, posterior);
      });
    }
  }
  return current;
}

/** The numbers of all states of each shape. */
function sameShape(current: readonly State[]): Float64Array[][] {
  const alike: Float64Array[][] = Array.from({ length: EVEN + 1 }, () => []);
  for (const { shape, u } of current) alike[shape].push(u);
  return alike;
}

/** One Metropolis move: of the wear, of all that is drawn given the wear, or of level, depth and scatter by a little. */
function moved(
  state: State,
  alike: readonly Float64Array[],
  share: number,
  states: States,
  posterior: Posterior,
): State {
  const { random, normal } = posterior;
  const choice = random();
  if (choice < 0.4 && state.shape !== EVEN) {
    const u = new Float64Array(state.u.length);
    if (!propose(state.u, alike, u, random, normal)) return state;
    const scored = states.scored({ shape: state.shape, u });
    const rise = scored.logEvidence - state.logEvidence;
    // Where the evidence alone is far too small, the rest of the state need not be drawn.
    if (rise < -20) return state;
    const next = states.draw(scored);
    return accepted(rise + share * (next.logWeight - state.logWeight), random) ? next : state;
  }
  if (choice < 0.65) {
    const next = states.draw(state);
    return accepted(share * (next.logWeight - state.logWeight), random) ? next : state;
  }
  const drawn = near(state, posterior);
  if (drawn === undefined) return state;
  const next = states.changed(state, drawn);
  const rise = states.logNormal(next) - states.logNormal(state);
  return accepted(rise + share * (next.logWeight - state.logWeight), random) ? next : state;
}

function accepted(rise: number, random: () => number): boolean {
  return rise >= 0 || 1 - random() < Math.exp(rise);
}

/** Level and depth trade against each other, so half of the moves keep their sum; now and then the scatter moves. */
function near(state: State, { grid, random, normal }: Posterior): Drawn | undefined {
  const { scatter } = state;
  if (random() < 0.3) {
    const next = scatter + SCATTER_STEPS[Math.floor(random() * SCATTER_STEPS.length)];
    const known = next >= 0 && next < grid.length && (state.path === undefined || grid[next].tau === 0);
    return known ? { level: state.level, depth: state.depth, scatter: next } : undefined;
  }
  const size = grid[scatter].sigma * Math.exp(1.2 * normal() - 0.7);
  const change = size * normal();
  const level = state.level + change;
  if (state.shape === EVEN) return { level, depth: 0, scatter };
  const depth = state.depth + (random() < 0.5 ? -change : 0) + 0.5 * size * normal();
  return depth < 0 ? undefined : { level, depth, scatter };
}

/** Steps to a neighbouring scatter: in repeatability either way, or in station effect either way. */
const SCATTER_STEPS = [1, -1, SIGMAS, -SIGMAS];
