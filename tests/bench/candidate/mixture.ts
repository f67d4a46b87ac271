import {
  discrepancyOf,
  EVEN,
  engagedAtStations,
  numbersOf,
  type Particle,
  type Posterior,
} from "./posterior.ts";
import { type Population, sample } from "./sampler.ts";
import { drawLog, logSum } from "./special.ts";
import { EVEN_CHANCE, WEAR_SHAPES } from "./wearShapes.ts";

/** Particles of a shape that counts: more for one of more numbers. */
const LEAST_PARTICLES = 150;
const NUMBERS_PER_PARTICLES = 5;
/** Share of them in the pilot run, which every shape has. */
const PILOT = 0.25;
/** Particles of a shape for each draw that it is expected to give. */
const PER_DRAW = 3;
/** How far a pilot run may be short in the logarithm of the evidence, for each inverse temperature after the first. */
const PILOT_DOUBT = 0.5;

/** Runs of a shape whose logarithms of the evidence differ by more than this are followed by a further one. */
const DISAGREEMENT = 3;
/** Shapes of a lesser share of the posterior are not sampled further. */
const LEAST_SHARE = 0.1;

/** The posterior within one wear shape, and the logarithm of prior × evidence. */
export interface Weighed {
  readonly shape: number;
  readonly runs: readonly Population[];
  readonly log: number;
}

export interface Mixture {
  readonly weighed: readonly Weighed[];
  /**
   * How far the pilot runs and all runs together disagree on the shapes' shares of the posterior: half of the summed
   * differences, from 0 for none to 1.
   */
  readonly convergence: number;
}

/**
 * Samples every wear shape by itself: a pilot run of each, then a main run of those that may give a fair share of the
 * draws, with the more particles the more they may give.
 */
export function weighShapes(posterior: Posterior, draws: number): Mixture {
  const { evidence, places, random, normal } = posterior;
  const engaged = new Float64Array(places.length);
  const run = (shape: number, share: number): Population => {
    const numbers = numbersOf(shape, posterior);
    const likelihood = (u: Float64Array, least: number): number => {
      const particle = { shape, u };
      engagedAtStations(particle, posterior, engaged);
      return evidence.ofShape(engaged, discrepancyOf(particle, posterior), least);
    };
    const size = Math.round(share * fullSize(numbers));
    return sample(numbers, size, likelihood, random, normal);
  };
  const even = Math.log(EVEN_CHANCE) + evidence.ofEven();
  const pilots = WEAR_SHAPES.map((_, shape) => ofRuns(shape, [run(shape, PILOT)]));
  const weighed: Weighed[] = [...pilots];
  const total = logSum(Float64Array.of(even, ...pilots.map(({ log }) => log)));
  for (const { shape, log, runs } of pilots) {
    const doubt = PILOT_DOUBT * (runs[0].steps - 1);
    const most = Math.min(1, Math.exp(log + doubt - total));
    const share = Math.min(1, (PER_DRAW * draws * most) / fullSize(numbersOf(shape, posterior))) - PILOT;
    if (share > 0.05) weighed[shape] = ofRuns(shape, [...runs, run(shape, share)]);
  }
  const ofEven: Weighed = { shape: EVEN, runs: [], log: even };
  const shares = sharesOf([ofEven, ...weighed]);
  for (const { shape, runs } of [...weighed]) {
    const [first, second] = runs.map(({ logEvidence }) => logEvidence);
    if (shares[shape + 1] < LEAST_SHARE || !(Math.abs(first - second) > DISAGREEMENT)) continue;
    weighed[shape] = ofRuns(shape, [...runs, run(shape, 1)]);
  }
  const all = [ofEven, ...weighed];
  const ofPilots = sharesOf([ofEven, ...pilots]);
  const convergence = sharesOf(all).reduce((sum, share, i) => sum + Math.abs(share - ofPilots[i]) / 2, 0);
  return { weighed: all, convergence };
}

/** Shares of the posterior. */
function sharesOf(weighed: readonly Weighed[]): Float64Array {
  const logs = Float64Array.from(weighed, ({ log }) => log);
  const total = logSum(logs);
  return logs.map((log) => Math.exp(log - total));
}

function fullSize(numbers: number): number {
  return LEAST_PARTICLES * (1 + numbers / NUMBERS_PER_PARTICLES);
}

function logPriorOf(shape: number): number {
  return Math.log(WEAR_SHAPES[shape].weight);
}

/** Runs together: their evidence is the mean over their particles. */
function ofRuns(shape: number, runs: readonly Population[]): Weighed {
  const particles = runs.reduce((sum, { points }) => sum + points.length, 0);
  const logs = Float64Array.from(
    runs,
    ({ points, logEvidence }) => logEvidence + Math.log(points.length / particles),
  );
  return { shape, runs, log: logPriorOf(shape) + logSum(logs) };
}

/** Particles of all shapes, each shape as often as prior × evidence say. */
export function drawParticles(
  weighed: readonly Weighed[],
  count: number,
  { random }: Posterior,
): readonly Particle[] {
  const logs = Float64Array.from(weighed, ({ log }) => log);
  return Array.from({ length: count }, () => {
    const { shape, runs } = weighed[drawLog(logs, random)];
    if (runs.length === 0) return { shape, u: new Float64Array(0) };
    const evidences = Float64Array.from(
      runs,
      ({ logEvidence, points }) => logEvidence + Math.log(points.length),
    );
    const { points } = runs[drawLog(evidences, random)];
    return { shape, u: points[Math.floor(random() * points.length)] };
  });
}
