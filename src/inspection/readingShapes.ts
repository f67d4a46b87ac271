/** A reading of any shape. Not in the schema, so that importing it does not load zod. */
type Loose = Readonly<Record<string, unknown>>;

interface Pair {
  readonly advancing: number;
  readonly retracting: number;
}

interface AtTarget {
  readonly target: number;
}

/** Whether a reading is a pair, judged by its required values: an unknown key may have any name, even `target`. */
export function isPair<Item extends Loose>(item: Item): item is Extract<Item, Pair> {
  return typeof item.advancing === "number" && typeof item.retracting === "number";
}

/** Whether a reading is a positioning reading. */
export function isPositioning<Item extends Loose>(item: Item): item is Extract<Item, AtTarget> {
  return !isPair(item) && typeof item.backlash !== "number";
}
