/** Positions that differ by at most this, in millimetres, are one place. */
export const SAME_PLACE = 0.001;

/**
 * Groups items at the same place, in order of position.
 *
 * @param positionOf position of an item, in millimetres
 */
export function groupByPosition<Item>(
  items: readonly Item[],
  positionOf: (item: Item) => number,
): readonly (readonly Item[])[] {
  const groups: Item[][] = [];
  for (const item of [...items].sort((a, b) => positionOf(a) - positionOf(b))) {
    const last = groups.at(-1);
    if (last !== undefined && positionOf(item) - positionOf(last[0]) <= SAME_PLACE) last.push(item);
    else groups.push([item]);
  }
  return groups;
}
