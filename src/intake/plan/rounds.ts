import { WIDEST_ARC, widestArc } from "./spacing.ts";

/** More stations than this are too many to read out and back before anything is known. */
const MOST_AT_ONCE = 20;
/** So many are a good first look, where the travel allows it. */
const GOOD_FIRST = 15;
const FEWEST_FIRST = 10;
/** How many times as many may be read first for the sake of their spread over the turn. */
const MORE = 1.35;
/** By how many stations the choice may leave the even places, so as not to fall in step with the screw. */
const NUDGES = [0, 0.5, 1];
/** What rounding the positions may change, in turns. */
const ROUNDED = 0.1;

/**
 * Which stations to read in a first round, both ends among them, and which in a second: for a person with one
 * indicator the first is enough wherever it leads to a verdict, and where it does not, its readings tell which of the others matter.
 *
 * It is chosen among those that are nearly even along the travel, and is longer than is good only where the travel is
 * so long that no verdict could be given otherwise.
 *
 * @param turns the stations' places along the travel in turns of the screw
 * @param limit a verdict needs stations nearer to one another than this, in turns
 * @returns indexes of stations, a list for each round; one round where there are few
 */
export function roundsOf(turns: readonly number[], limit: number): readonly (readonly number[])[] {
  const all = turns.map((_, index) => index);
  if (turns.length <= MOST_AT_ONCE) return [all];
  const first = firstRound(turns, limit);
  return first.length === turns.length ? [all] : [first, all.filter((index) => !first.includes(index))];
}

function firstRound(turns: readonly number[], limit: number): readonly number[] {
  const last = turns.length - 1;
  const choices = Array.from({ length: last - FEWEST_FIRST + 1 }, (_, index) => FEWEST_FIRST - 1 + index)
    .flatMap((intervals) => NUDGES.map((nudge) => nearlyEvenly(last, intervals, nudge)))
    .map((stations) => ({ stations, ...spread(stations.map((index) => turns[index] ?? 0)) }))
    .filter(({ widest }) => widest < limit);
  const fewest = Math.min(...choices.map(({ stations }) => stations.length));
  const most = Math.max(GOOD_FIRST, fewest);
  const [best] = choices.filter(({ stations }) => stations.length <= most).sort(byMerit);
  if (best !== undefined && lacking(best) === 0) return best.stations;
  // In step with the screw: a few more are worth it.
  const [better] = choices.filter(({ stations }) => stations.length <= most * MORE).sort(byMerit);
  return better?.stations ?? turns.map((_, index) => index);
}

interface Choice {
  readonly stations: readonly number[];
  /** The widest way from one station to the next, in turns. */
  readonly widest: number;
  /** The widest part of a turn that no station meets, in turns. */
  readonly widestArc: number;
}

/** Those that are spread over the turn first, then the closest along the travel, then the fewest. */
function byMerit(one: Choice, other: Choice): number {
  const arcs = lacking(one) - lacking(other);
  if (Math.abs(arcs) > 1e-9) return arcs;
  const gaps = one.widest - other.widest;
  return Math.abs(gaps) > ROUNDED ? gaps : one.stations.length - other.stations.length;
}

/** How much more of a turn it leaves without a station than it may. */
function lacking({ widestArc }: Choice): number {
  return Math.max(0, widestArc - WIDEST_ARC - ROUNDED);
}

/** So many intervals, as even as whole stations allow but for a nudge, forth at every third and back at the next. */
function nearlyEvenly(last: number, intervals: number, nudge: number): readonly number[] {
  return Array.from({ length: intervals + 1 }, (_, index) => {
    const way = index === intervals ? 0 : [0, 1, -1][index % 3];
    return Math.round((index * last) / intervals + nudge * (way ?? 0));
  });
}

function spread(turns: readonly number[]) {
  const gaps = turns.slice(1).map((turn, index) => turn - (turns[index] ?? 0));
  return { widest: Math.max(...gaps), widestArc: widestArc(turns) };
}
