import { closed } from "./closing.ts";
import { conditionalPaths, type PathPlaces, pathPlacesOf } from "./discrepancy.ts";
import type { Drawn } from "./evidence.ts";
import { type Flank, leastEngaged, leastOfFlank, type Wear } from "./patch.ts";
import {
  discrepancyOf,
  EVEN,
  engagedAtStations,
  type Particle,
  type Posterior,
  wearOf,
} from "./posterior.ts";
import { DEPTH_SCALES } from "./priors.ts";

/** A worn screw with all its numbers. Lost motion is level + depth × shape, and the discrepancy where there is one. */
export interface State extends Particle, Drawn {
  /** Wear that the nut meets at each station, as a share of the deepest. */
  readonly engaged: Float64Array;
  /** Logarithm of the evidence for the wear. */
  readonly logEvidence: number;
  /** Wear that the nut meets of each flank along the path's places, where there is a discrepancy. */
  readonly flanks: Flanks | undefined;
  /** The discrepancy along the path's places, mm. */
  readonly path: Float64Array | undefined;
  /** Logarithm of the likelihood as it is, over that by which the evidence was worked out. */
  readonly logWeight: number;
}

interface Flanks {
  readonly first: Float64Array;
  readonly second: Float64Array | undefined;
}

/** What a state has whatever its level, depth, scatter and path. */
type Scored = Particle & Pick<State, "engaged" | "logEvidence" | "flanks">;

/** Makes states, and works out their profiles and likelihoods. */
export interface States {
  /** A state with level, depth, scatter and path drawn given the wear. */
  draw(particle: Scored): State;
  /** The same state with another level, depth and scatter; its path stays. */
  changed(state: State, drawn: Drawn): State;
  /** What a particle needs to be made a state. */
  scored(particle: Particle): Scored;
  /** Logarithm of the prior and of the normal likelihood by which the evidence was worked out. */
  logNormal(state: State): number;
  /** Lost motion at the profile's positions, mm. */
  profileOf(state: State): Float64Array;
}

/** Logarithm of the prior density of a depth, per millimetre. */
export function logDepthPrior(depth: number): number {
  if (depth < 0) return Number.NEGATIVE_INFINITY;
  let sum = 0;
  for (const scale of DEPTH_SCALES) sum += Math.exp(-0.5 * (depth / scale) ** 2) / scale;
  return Math.log((sum * Math.sqrt(2 / Math.PI)) / DEPTH_SCALES.length);
}

export function statesOf(posterior: Posterior): States {
  const { data, evidence, grid, rounded, discrepancies, random, normal, positions, shares, reach } =
    posterior;
  const stations = data.stations.length;
  const span = data.travel.to - data.travel.from;
  const path: PathPlaces = pathPlacesOf(data, positions);
  const pathShares = path.places.map((at) => (at - data.travel.from) / span);
  const paths = conditionalPaths(path, discrepancies, rounded, normal);

  const flanksOf = (wear: Wear): Flanks => {
    const along = (flank: Flank): Float64Array => {
      const worn = new Float64Array(pathShares.length);
      leastOfFlank(flank, pathShares, reach * wear.engaged, worn);
      return worn;
    };
    return { first: along(wear.first), second: wear.second && along(wear.second) };
  };

  /** Lost motion along the path. */
  const alongPath = (
    { share, engaged }: Wear,
    { first, second }: Flanks,
    level: number,
    depth: number,
    discrepancy: Float64Array,
  ): Float64Array => {
    const part = second === undefined ? depth : depth * share;
    const worn = first.map((value, i) => Math.max(0, part * value + discrepancy[i]));
    const result = closed(worn, path.places, data.engagedLength * engaged);
    for (let i = 0; i < result.length; i++) {
      result[i] += level + (second === undefined ? 0 : depth * (1 - share) * second[i]);
    }
    return result;
  };

  const logWeightOf = (state: Omit<State, "logWeight">): number => {
    const { engaged, level, depth, scatter } = state;
    let sum = level < 0 ? -0.5 * (level / grid[scatter].sigma) ** 2 : 0;
    const wear = state.path && wearOf(state);
    if (state.path === undefined || state.flanks === undefined || wear === undefined) {
      for (let i = 0; i < stations; i++) {
        const backlash = level + depth * engaged[i];
        sum += rounded.log(i, scatter, backlash) - logNormalAt(i, scatter, backlash);
      }
      return sum;
    }
    const profile = alongPath(wear, state.flanks, level, depth, state.path);
    for (let i = 0; i < stations; i++) {
      const at = path.stations[i];
      const linear = level + depth * engaged[i] + state.path[at];
      sum += rounded.log(i, scatter, profile[at]) - logNormalAt(i, scatter, linear);
    }
    return sum;
  };

  const logNormalAt = (station: number, scatter: number, backlash: number): number => {
    const { logArea, mean, variance } = rounded.moments(station, scatter);
    return logArea - 0.5 * ((backlash - mean) ** 2 / variance + Math.log(2 * Math.PI * variance));
  };

  const withWeight = (state: Omit<State, "logWeight">): State => ({
    ...state,
    logWeight: logWeightOf(state),
  });

  return {
    draw({ shape, u, engaged, logEvidence, flanks }) {
      const discrepancy = discrepancyOf({ shape, u }, posterior);
      const isEven = shape === EVEN;
      const { level, depth, scatter } = evidence.draw(
        isEven ? undefined : engaged,
        discrepancy,
        random,
        normal,
      );
      const drawn =
        discrepancy === 0
          ? undefined
          : paths.draw(
              discrepancy,
              scatter,
              engaged.map((share) => level + depth * share),
            );
      return withWeight({ shape, u, engaged, logEvidence, flanks, level, depth, scatter, path: drawn });
    },
    changed({ shape, u, engaged, logEvidence, flanks, path: kept }, { level, depth, scatter }) {
      return withWeight({ shape, u, engaged, logEvidence, flanks, path: kept, level, depth, scatter });
    },
    scored({ shape, u }) {
      const engaged = new Float64Array(stations);
      engagedAtStations({ shape, u }, posterior, engaged);
      const discrepancy = discrepancyOf({ shape, u }, posterior);
      const wear = discrepancy === 0 ? undefined : wearOf({ shape, u });
      const logEvidence = shape === EVEN ? evidence.ofEven() : evidence.ofShape(engaged, discrepancy);
      return { shape, u, engaged, logEvidence, flanks: wear && flanksOf(wear) };
    },
    logNormal(state) {
      const { engaged, level, depth, scatter } = state;
      let sum = grid[scatter].logPrior + (state.shape === EVEN ? 0 : logDepthPrior(depth));
      for (let i = 0; i < stations; i++) {
        const added = state.path === undefined ? 0 : state.path[path.stations[i]];
        sum += logNormalAt(i, scatter, level + depth * engaged[i] + added);
      }
      return sum;
    },
    profileOf(state) {
      const { level, depth } = state;
      const wear = wearOf(state);
      const backlash = new Float64Array(positions.length);
      if (wear !== undefined && state.flanks !== undefined && state.path !== undefined) {
        const profile = alongPath(wear, state.flanks, level, depth, state.path);
        return backlash.map((_, i) => profile[path.positions[i]]);
      }
      if (wear !== undefined) leastEngaged(wear, shares, reach, backlash);
      for (let i = 0; i < backlash.length; i++) backlash[i] = level + depth * backlash[i];
      return backlash;
    },
  };
}
