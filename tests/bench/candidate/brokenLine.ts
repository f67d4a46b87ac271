/** Wear that follows straight lines between knots, level beyond the first and the last of them. */
export interface BrokenLine {
  /** Shares of the travel, in order. */
  readonly places: readonly number[];
  /** Shares of the depth. */
  readonly heights: readonly number[];
}

/** The line through knots, in any order, scaled so that it runs from 0 to 1. */
export function brokenLine(knots: readonly (readonly [place: number, height: number])[]): BrokenLine {
  const sorted = [...knots].sort((a, b) => a[0] - b[0]);
  let least = Number.POSITIVE_INFINITY;
  let most = Number.NEGATIVE_INFINITY;
  for (const [, height] of sorted) {
    least = Math.min(least, height);
    most = Math.max(most, height);
  }
  const range = most > least ? most - least : 1;
  return {
    places: sorted.map(([place]) => place),
    heights: sorted.map(([, height]) => (height - least) / range),
  };
}

/** The least of the line within reach of each position: at an end of the stretch, or at a knot within it. */
export function leastOfLine(
  line: BrokenLine,
  positions: Float64Array,
  reach: number,
  into: Float64Array,
): void {
  const { places, heights } = line;
  for (let i = 0; i < positions.length; i++) {
    into[i] = Math.min(lineAt(line, positions[i] - reach), lineAt(line, positions[i] + reach));
  }
  for (let k = 0; k < places.length; k++) {
    for (let i = 0; i < positions.length; i++) {
      if (heights[k] < into[i] && Math.abs(positions[i] - places[k]) < reach) into[i] = heights[k];
    }
  }
}

/** The positions at which the nut, with both its ends on one wear, stands about a high knot. */
export function peaksOfLine(line: BrokenLine, reach: number): readonly number[] {
  const { places, heights } = line;
  return places.flatMap((place, k) => {
    const isHigh = heights[k] > (heights[k - 1] ?? 0) && heights[k] > (heights[k + 1] ?? 0);
    if (!isHigh) return [];
    let left = place - reach;
    let right = place + reach;
    for (let i = 0; i < 24; i++) {
      const middle = 0.5 * (left + right);
      if (lineAt(line, middle - reach) < lineAt(line, middle + reach)) left = middle;
      else right = middle;
    }
    return [0.5 * (left + right)];
  });
}

function lineAt({ places, heights }: BrokenLine, at: number): number {
  const last = places.length - 1;
  if (at <= places[0]) return heights[0];
  if (at >= places[last]) return heights[last];
  let k = 1;
  while (places[k] < at) k++;
  const span = places[k] - places[k - 1];
  const share = span > 0 ? (at - places[k - 1]) / span : 1;
  return heights[k - 1] + share * (heights[k] - heights[k - 1]);
}
