/** A reading of whatever shape. Apart from the schema, so that what only works with readings need not load that. */
type Loose = Readonly<Record<string, unknown>>;

interface Pair {
  readonly advancing: number;
  readonly retracting: number;
}

interface AtTarget {
  readonly target: number;
}

/** The shape is told by the values it needs: an unknown key may have any name, even `advancing` or `target`. */
export function isPair<Item extends Loose>(item: Item): item is Extract<Item, Pair> {
  return typeof item.advancing === "number" && typeof item.retracting === "number";
}

export function isPositioning<Item extends Loose>(item: Item): item is Extract<Item, AtTarget> {
  return !isPair(item) && typeof item.backlash !== "number";
}
