import type { Spot } from "../assessment.ts";
import { normals, type Random } from "../random.ts";
import { extremes, gridOf, type ProfileData, type ProfileDraw, type ProfileDraws } from "./draws.ts";
import { type Evidence, evidenceOf, logDepthPrior } from "./evidence.ts";
import { type Scatter, scatterGrid } from "./noise.ts";
import { leastEngaged, peaksOf, type Wear } from "./patch.ts";
import { type RoundedLikelihood, roundedLikelihood } from "./rounding.ts";
import { byCharacter, EVEN, type Particle, resample, temper, wearOf } from "./temper.ts";

const SIZE = Number(process.env.N1 ?? 1200);
const MOVES = Number(process.env.MOVES ?? 3);
const SETTLING = Number(process.env.SETTLING ?? 6);

interface State extends Particle {
  readonly shape: Float64Array;
  readonly level: number;
  readonly depth: number;
  readonly scatter: number;
}

/** Everything that does not change while one survey is fitted. */
interface Fit {
  readonly data: ProfileData;
  readonly places: Float64Array;
  readonly reach: number;
  readonly grid: readonly Scatter[];
  readonly evidence: Evidence;
  readonly rounded: RoundedLikelihood;
  readonly random: Random;
  readonly normal: () => number;
}

export function screwProfile(data: ProfileData, random: Random): ProfileDraws {
  const { travel, stations } = data;
  const span = travel.to - travel.from;
  const grid = scatterGrid(data);
  const fit: Fit = {
    data,
    places: Float64Array.from(stations, ({ position }) => (position - travel.from) / span),
    reach: data.engagedLength / (2 * span),
    grid,
    evidence: evidenceOf(data, grid),
    rounded: roundedLikelihood(data, grid),
    random,
    normal: normals(random),
  };
  const states = settled(startingStates(fit), fit);
  const positions = gridOf(data);
  const shares = positions.map((at) => (at - travel.from) / span);
  const draws = states.map((state) => drawOf(state, positions, shares, fit));
  const uneven = states.filter((state) => state.character !== EVEN).length / states.length;
  return { positions, draws, unevenChance: uneven };
}

/** Draws by their evidence, with readings' rounding taken as normal. */
function startingStates(fit: Fit): readonly State[] {
  const shape = new Float64Array(fit.places.length);
  const even = fit.evidence.ofEven();
  const score = (wear: Wear | undefined): number => {
    if (wear === undefined) return even;
    leastEngaged(wear, fit.places, fit.reach, shape);
    return fit.evidence.ofShape(shape);
  };
  return temper(SIZE, MOVES, score, fit.random).map(({ character, u }) => stateOf(character, u, fit));
}

function stateOf(character: number, u: Float64Array, fit: Fit): State {
  const wear = wearOf({ character, u });
  const shape = new Float64Array(fit.places.length);
  if (wear !== undefined) leastEngaged(wear, fit.places, fit.reach, shape);
  const drawn = { character, u, shape, ...fit.evidence.draw(wear && shape, fit.random, fit.normal) };
  return { ...drawn, log: logPosterior(drawn, fit) };
}

/** Logarithm of the posterior with readings rounded as they really are. */
function logPosterior(state: Omit<State, "log">, { rounded, grid }: Fit): number {
  const { shape, level, depth, scatter } = state;
  if (level < 0) return Number.NEGATIVE_INFINITY;
  let sum = grid[scatter].logPrior + (state.character === EVEN ? 0 : logDepthPrior(depth));
  for (let i = 0; i < shape.length; i++) sum += rounded(i, scatter, level + depth * shape[i]);
  return sum;
}

/** The starting states weighed by the readings' rounding as it really is, then moved until they have settled. */
function settled(start: readonly State[], fit: Fit): readonly State[] {
  const { random } = fit;
  const logWeights = start.map((state) => state.log - logNormalPosterior(state, fit));
  const greatest = Math.max(...logWeights);
  const states = resample(
    start,
    logWeights.map((log) => Math.exp(log - greatest)),
    SIZE,
    random,
  );
  for (let sweep = 0; sweep < SETTLING; sweep++) {
    const kin = byCharacter(states);
    for (let i = 0; i < states.length; i++) {
      const next = moved(states[i], kin[states[i].character], fit);
      if (next !== undefined && Math.log(1 - random()) < next.log - states[i].log) states[i] = next;
    }
  }
  return states;
}

function moved(state: State, kin: readonly State[], fit: Fit): State | undefined {
  const { random, normal, grid } = fit;
  const noise = grid[state.scatter].sigma;
  const { character } = state;
  const choice = random();
  let { level, depth, scatter, u, shape } = state;
  if (choice < 0.25) {
    scatter += random() < 0.5 ? 1 : -1;
    if (scatter < 0 || scatter >= grid.length) return undefined;
  }
  if (choice < 0.6 || character === EVEN) {
    const size = noise * Math.exp(1.2 * normal() - 0.7);
    const change = size * normal();
    level += change;
    if (character !== EVEN) depth += (random() < 0.5 ? -change : 0) + 0.5 * size * normal();
  } else {
    const a = kin[Math.floor(random() * kin.length)];
    const b = kin[Math.floor(random() * kin.length)];
    const size = random() < 0.1 ? 1 : (2.38 / Math.sqrt(2 * (u.length + 2))) * Math.exp(0.7 * normal() - 0.5);
    u = u.map((value, i) => value + size * (a.u[i] - b.u[i]) + 0.001 * normal());
    if (u.some((value) => value < 0 || value >= 1)) return undefined;
    level += size * (a.level - b.level) + 0.05 * noise * normal();
    depth += size * (a.depth - b.depth) + 0.05 * noise * normal();
    const wear = wearOf({ character, u });
    shape = new Float64Array(fit.places.length);
    if (wear !== undefined) leastEngaged(wear, fit.places, fit.reach, shape);
  }
  if (depth < 0) return undefined;
  const next = { character, u, shape, level, depth, scatter };
  return { ...next, log: logPosterior(next, fit) };
}

/** The same posterior with rounding as a normal error that repeats at a station share, as the start was drawn from. */
function logNormalPosterior({ character, shape, level, depth, scatter }: State, { data, grid }: Fit): number {
  const { sigma, logPrior } = grid[scatter];
  const rounding = (data.roundings * data.resolution ** 2) / 12;
  const variance = sigma ** 2 + rounding / 4;
  let sum = logPrior + (character === EVEN ? 0 : logDepthPrior(depth));
  data.stations.forEach((station, i) => {
    const count = station.readings.length;
    const spread = sigma ** 2 / count + rounding;
    sum -= 0.5 * ((station.mean - level - depth * shape[i]) ** 2 / spread + Math.log(spread));
    let squares = 0;
    for (const reading of station.readings) squares += (reading.value - station.mean) ** 2;
    sum -= 0.5 * ((count - 1) * Math.log(variance) + squares / variance);
  });
  return sum;
}

function drawOf(state: State, positions: Float64Array, shares: Float64Array, fit: Fit): ProfileDraw {
  const { level, depth } = state;
  const wear = wearOf(state);
  const backlash = new Float64Array(positions.length);
  if (wear !== undefined) leastEngaged(wear, shares, fit.reach, backlash);
  for (let i = 0; i < backlash.length; i++) backlash[i] = level + depth * backlash[i];
  const { tight, loose } = extremes(positions, backlash, fit.data.workingRange);
  return {
    backlash,
    tight,
    loose: wear === undefined ? loose : loosest(loose, wear, state, fit),
    uneven: wear !== undefined,
    repeatability: fit.grid[state.scatter].sigma,
  };
}

/** The loosest spot, which may be a peak between the positions at which the profile is kept. */
function loosest(found: Spot, wear: Wear, { level, depth }: State, { data, reach }: Fit): Spot {
  const { travel, workingRange } = data;
  const span = travel.to - travel.from;
  const peaks = peaksOf(wear, reach).map((share) => travel.from + share * span);
  const within = peaks.filter((at) => at >= workingRange.from && at <= workingRange.to);
  const shares = Float64Array.from(within, (at) => (at - travel.from) / span);
  const values = new Float64Array(shares.length);
  leastEngaged(wear, shares, reach, values);
  return within.reduce((best, position, i) => {
    const backlash = level + depth * values[i];
    return backlash > best.backlash ? { position, backlash } : best;
  }, found);
}
