import type { Spot } from "../../../src/analysis/assessment.ts";
import type { Random } from "../../../src/analysis/statistics/random.ts";
import { extremes, type ProfileData, type ProfileDraw, type ProfileDraws } from "./draws.ts";
import { drawParticles, weighShapes } from "./mixture.ts";
import { leastEngaged, peaksOf, type Wear } from "./patch.ts";
import { type Posterior, posteriorOf, wearOf } from "./posterior.ts";
import { LEAST_UNEVEN } from "./priors.ts";
import { refine } from "./refine.ts";
import { type State, type States, statesOf } from "./state.ts";

const DRAWS = 500;

/**
 * Draws of the profile for a screw worn in any way that the wear shapes and the discrepancy hold, or not at all, met by
 * a stiff nut that is stopped by the least worn thread it engages on each flank. METHOD.md beside this file is the
 * method; what was tried stands in its section 7.
 */
export function screwProfile(data: ProfileData, random: Random): ProfileDraws {
  const posterior = posteriorOf(data, random);
  const states = statesOf(posterior);
  const { weighed, convergence } = weighShapes(posterior, DRAWS);
  const particles = drawParticles(weighed, DRAWS, posterior);
  const start = particles.map((particle) => states.draw(states.scored(particle)));
  const draws = refine(start, states, posterior).map((state) => drawOf(state, states, posterior));
  const uneven = draws.filter(({ loose, tight }) => loose.backlash - tight.backlash > LEAST_UNEVEN);
  return { positions: posterior.positions, draws, unevenChance: uneven.length / draws.length, convergence };
}

function drawOf(state: State, states: States, posterior: Posterior): ProfileDraw {
  const { positions, grid, data } = posterior;
  const backlash = states.profileOf(state);
  const { sigma, tau } = grid[state.scatter];
  const { tight, loose } = extremes(positions, backlash, data.workingRange);
  const wear = wearOf(state);
  const peak = wear === undefined ? loose : loosest(loose, backlash, wear, state, posterior);
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

/** The loosest spot, which may be a peak of the wear between the positions at which the profile is kept. */
function loosest(
  found: Spot,
  backlash: Float64Array,
  wear: Wear,
  { depth }: State,
  { data, reach, positions, shares }: Posterior,
): Spot {
  const { from, to } = data.workingRange;
  const span = data.travel.to - data.travel.from;
  return peaksOf(wear, reach).reduce((best, share) => {
    const position = data.travel.from + share * span;
    if (!(position >= from && position <= to)) return best;
    const after = Math.max(
      1,
      positions.findIndex((at) => at >= position),
    );
    const part = (position - positions[after - 1]) / (positions[after] - positions[after - 1]);
    const values = new Float64Array(3);
    leastEngaged(wear, Float64Array.of(shares[after - 1], share, shares[after]), reach, values);
    const line = (before: number, next: number): number => before + part * (next - before);
    const risen = depth * Math.max(0, values[1] - line(values[0], values[2]));
    const height = line(backlash[after - 1], backlash[after]) + risen;
    return height > best.backlash ? { position, backlash: height } : best;
  }, found);
}
