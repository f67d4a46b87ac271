import type { Spot } from "../assessment.ts";
import type { Random } from "../statistics/random.ts";
import { extremes, gridOf, type ProfileData, type ProfileDraw, type ProfileDraws } from "./draws.ts";
import { type Fit, fitOf, type State, shapeOf } from "./fit.ts";
import { leastEngaged, peaksOf, type Wear } from "./patch.ts";
import { settle } from "./settle.ts";
import { type Particle, type Scoring, temper, wearOf } from "./temper.ts";

const DRAWS = 400;
/** Profiles that differ by less along the travel, in millimetres, are the same everywhere to any indicator. */
const LEAST_UNEVEN = 0.001;

/**
 * Draws of the profile for a screw that has worn in one or two patches, or not at all, met by a stiff nut that is
 * stopped by the least worn thread it engages.
 *
 * Ways that were tried on simulated slides before this one, with what they gave there:
 * - constant or Gaussian process, hyperparameters integrated: too loose on level stretches, so its uneven part
 *   comes out too large, and too smooth at edges; its 95 % interval for the uneven part held the truth in half of
 *   the cases;
 * - one and two free patches with broad priors: 88 %, since narrow peaks between stations were thought too unlikely;
 * - the characters of wear kept here, with rounding taken as normal: false claims of uneven wear on coarse readings,
 *   whose rounding errors are the same from station to station;
 * - the same with rounding as it is: kept. The bench prints how it does;
 * - three times the draws, moves and sweeps: intervals hold the truth in 94 to 96 % rather than 91 to 94, verdicts are
 *   the same; told the true shape of wear, the rule of decision is sure in 90 % of the cases, with this prior in 82;
 * - a prior as narrow as the simulated slides themselves (widths of one and of two bumps apart, sharper edges, stiffer
 *   nut, hardly any station effect, repeatability known better): sure in 83.8 % of a thousand where this one is in 82.2,
 *   wrong in 0.4 and 0.2 % of those; but where bumps are narrower than simulated it is wrong in 2.9 rather than 1.7 %,
 *   and where the screw wobbles in 1.5 rather than 0.9 %. Screws are not bound to the simulator, so it was given up.
 */
export function screwProfile(data: ProfileData, random: Random): ProfileDraws {
  const fit = fitOf(data, random);
  const states = settle(startingStates(fit), fit);
  const positions = gridOf(data);
  const shares = positions.map((at) => shareOf(at, data));
  const draws = states.map((state) => drawOf(state, positions, shares, fit));
  const uneven = draws.filter(({ loose, tight }) => loose.backlash - tight.backlash > LEAST_UNEVEN);
  return { positions, draws, unevenChance: uneven.length / draws.length };
}

function shareOf(position: number, { travel }: ProfileData): number {
  return (position - travel.from) / (travel.to - travel.from);
}

/** Draws by their evidence, with readings' rounding taken as normal. */
function startingStates(fit: Fit): readonly State[] {
  const even = fit.evidence.ofEven();
  const shape = new Float64Array(fit.places.length);
  const score: Scoring = (wear, least) => {
    if (wear === undefined) return even;
    leastEngaged(wear, fit.places, fit.reach, shape);
    return fit.evidence.ofShape(shape, least);
  };
  return temper(DRAWS, score, fit.random).map((particle) => stateOf(particle, fit));
}

function stateOf({ character, u }: Particle, fit: Fit): State {
  const shape = shapeOf({ character, u }, fit);
  const isEven = wearOf({ character, u }) === undefined;
  return { character, u, shape, ...fit.evidence.draw(isEven ? undefined : shape, fit.random, fit.normal) };
}

function drawOf(state: State, positions: Float64Array, shares: Float64Array, fit: Fit): ProfileDraw {
  const { level, depth } = state;
  const wear = wearOf(state);
  const backlash = new Float64Array(positions.length);
  if (wear !== undefined) leastEngaged(wear, shares, fit.reach, backlash);
  for (let i = 0; i < backlash.length; i++) backlash[i] = level + depth * backlash[i];
  const { sigma, tau } = fit.grid[state.scatter];
  const { tight, loose } = extremes(positions, backlash, fit.data.workingRange);
  const peak = wear === undefined ? loose : loosest(loose, wear, state, fit);
  // What stations add may be the screw's: a wobble of that deviation has this amplitude, and crests near the loosest
  // spot. At the tight spot it is left out: there it would make every uneven part out to be greater than it is.
  const wobble = Math.SQRT2 * tau;
  return {
    backlash,
    tight,
    loose: { ...peak, backlash: peak.backlash + wobble },
    repeatability: sigma,
    stationEffect: tau,
  };
}

/** The loosest spot, which may be a peak between the positions at which the profile is kept. */
function loosest(found: Spot, wear: Wear, { level, depth }: State, { data, reach }: Fit): Spot {
  const { travel, workingRange } = data;
  const peaks = peaksOf(wear, reach).map((share) => travel.from + share * (travel.to - travel.from));
  const within = peaks.filter((at) => at >= workingRange.from && at <= workingRange.to);
  const values = new Float64Array(within.length);
  leastEngaged(
    wear,
    Float64Array.from(within, (at) => shareOf(at, data)),
    reach,
    values,
  );
  return within.reduce((best, position, i) => {
    const backlash = level + depth * values[i];
    return backlash > best.backlash ? { position, backlash } : best;
  }, found);
}
