/** How far one flank of the screw has worn back, mm, at a place along it, mm: where the middle of the nut may stand. */
export type Flank = (place: number) => number;

export interface LeastEngaged {
  /** Lost motion at positions of the slide that are `step` apart, from 0 to the travel's end. */
  readonly values: Float64Array;
  readonly step: number;
  readonly least: number;
  readonly greatest: number;
  readonly leastAt: number;
  /** Lost motion at a position, on the straight line between its neighbours. */
  readonly at: (position: number) => number;
}

const STEPS = 1500;

/**
 * Lost motion along the travel: a stiff nut is stopped by the least worn thread it engages, on each flank.
 *
 * @param flanks wear of each flank, looked up from half a nut before the travel to half a nut behind it
 * @param slide travel from 0, and the nut's engaged length, mm
 * @param elsewhere what is the same everywhere, mm
 * @param steps into how many the thread is divided; the nut's length is rounded to a whole number of them
 */
export function leastEngaged(
  flanks: readonly Flank[],
  { travel, engaged }: { readonly travel: number; readonly engaged: number },
  elsewhere: number,
  steps = STEPS,
): LeastEngaged {
  const thread = (travel + engaged) / steps;
  const worn = flanks.map((flank) =>
    Float64Array.from({ length: steps + 1 }, (_, i) => flank(i * thread - engaged / 2)),
  );
  const window = Math.round(engaged / thread);
  const met = worn.map((flank) => leastInWindows(flank, window + 1));
  const values = met[0].map((_, i) => met.reduce((sum, least) => sum + least[i], elsewhere));
  const step = travel / (values.length - 1);
  const least = values.reduce((a, b) => Math.min(a, b));
  return {
    values,
    step,
    least,
    greatest: values.reduce((a, b) => Math.max(a, b)),
    leastAt: values.indexOf(least) * step,
    at: (position) => {
      const place = Math.min(values.length - 1, Math.max(0, position / step));
      const before = Math.floor(place);
      const after = Math.min(values.length - 1, before + 1);
      return values[before] + (place - before) * (values[after] - values[before]);
    },
  };
}

/** The least of every so many neighbouring values. */
function leastInWindows(values: Float64Array, length: number): Float64Array {
  const least = new Float64Array(values.length + 1 - length);
  // Places of values that no later one within the window undercuts, least first.
  const waiting: number[] = [];
  let first = 0;
  for (let i = 0; i < values.length; i++) {
    while (waiting.length > first && values[waiting[waiting.length - 1]] >= values[i]) waiting.pop();
    waiting.push(i);
    if (waiting[first] <= i - length) first++;
    if (i >= length - 1) least[i + 1 - length] = values[waiting[first]];
  }
  return least;
}
