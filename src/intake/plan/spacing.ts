/** How stations lie along a travel, counted in turns of the screw from its start. */
export interface Spacing {
  /** In order along the travel, the first 0 and the last the whole travel. */
  readonly turns: readonly number[];
  /** The widest way from one station to the next, in turns. */
  readonly widest: number;
  /** The widest part of a turn that no station meets, in turns. */
  readonly widestArc: number;
}

/** Neighbours at least this share of a turn apart, either way, tell a wobble once per turn from a worn stretch. */
const LEAST_SHARE = 0.25;
/** No more of a turn than this is left without a station, where the stations allow it. */
export const WIDEST_ARC = 0.25;
/** What binary fractions make of lengths that are equal, in turns. */
const NOTHING = 1e-9;

/**
 * The fewest stations, both ends among them, that lie nearer to one another than the limit and leave no quarter of the
 * screw's turn without one.
 *
 * @param travel in turns of the screw
 * @param limit stations are to lie nearer than this, in turns
 * @param least there are to be no fewer stations than this
 * @param most the search ends there
 * @returns undefined where so many do not do
 */
export function fewestStations(
  travel: number,
  limit: number,
  least: number,
  most: number,
): Spacing | undefined {
  const first = Math.max(least - 1, Math.ceil(travel / limit));
  for (let intervals = first; intervals < most; intervals++) {
    const spacing = spacingOf(travel, intervals);
    if (spacing.widest >= limit - NOTHING) continue;
    // Where neighbours are a small part of a turn apart, more of them meet the screw at no other angles.
    if (spacing.widestArc <= WIDEST_ARC + NOTHING || travel / intervals < LEAST_SHARE) return spacing;
  }
  return undefined;
}

/**
 * The most even of the spacings with so many intervals that leave no quarter of the screw's turn without a station;
 * where none does, the one that leaves least.
 *
 * From one station to the next the screw turns on by some whole turns, now one more and now one less, and by a share
 * of a turn that is always the same: travel = whole turns in all + intervals × share. The angles at which the stations
 * meet the screw are then multiples of the share, and those of neighbours never near to one another.
 */
export function spacingOf(travel: number, intervals: number): Spacing {
  const [first, ...others] = wholeTurns(travel, intervals).map((whole) =>
    spacingWith(travel, intervals, whole),
  );
  return others.reduce((best, next) => (isBetter(next, best) ? next : best), first);
}

/** The numbers of whole turns that leave each interval a share of a turn that tells neighbours apart. */
function wholeTurns(travel: number, intervals: number): readonly [number, ...number[]] {
  const most = Math.floor(travel - intervals * LEAST_SHARE + NOTHING);
  const least = Math.max(0, Math.ceil(travel - intervals * (1 - LEAST_SHARE) - NOTHING));
  if (most < least) return [0];
  return [least, ...Array.from({ length: most - least }, (_, index) => least + 1 + index)];
}

function isBetter(one: Spacing, other: Spacing): boolean {
  const excess = (spacing: Spacing): number => Math.max(0, spacing.widestArc - WIDEST_ARC);
  const arcs = excess(one) - excess(other);
  if (Math.abs(arcs) > NOTHING) return arcs < 0;
  const widths = one.widest - other.widest;
  if (Math.abs(widths) > NOTHING) return widths < 0;
  return one.widestArc < other.widestArc - NOTHING;
}

function spacingWith(travel: number, intervals: number, whole: number): Spacing {
  const share = (travel - whole) / intervals;
  const turns = Array.from(
    { length: intervals + 1 },
    (_, index) => Math.round((index * whole) / intervals) + index * share,
  );
  return { turns, widest: Math.ceil(whole / intervals) + share, widestArc: widestArc(turns) };
}

/**
 * The widest part of a turn that is left between the angles at which stations meet the screw.
 *
 * @param turns the stations' places in turns
 */
export function widestArc(turns: readonly number[]): number {
  const angles = turns.map((turn) => turn - Math.floor(turn)).sort((a, b) => a - b);
  const across = 1 - (angles.at(-1) ?? 0) + (angles[0] ?? 0);
  return Math.max(across, ...angles.slice(1).map((angle, index) => angle - (angles[index] ?? 0)));
}
