/**
 * The value of a table between two of its entries, on the straight line between them.
 *
 * @param place counted in entries, from 0 to less than the index of the last
 */
export function between(values: Float64Array, place: number): number {
  const before = place | 0;
  return values[before] + (place - before) * (values[before + 1] - values[before]);
}
