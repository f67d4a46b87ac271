/**
 * Linear interpolation at a position, for any number of curves over the same positions.
 *
 * @param positions rising; a position beyond them takes the value at the nearest end
 * @returns the value there of a curve given by its values at the positions
 */
export function interpolationAt(positions: Float64Array, position: number): (values: Float64Array) => number {
  const next = positions.findIndex((each) => each >= position);
  if (next === 0) return (values) => values[0];
  if (next === -1) return (values) => values[positions.length - 1];
  const share = (position - positions[next - 1]) / (positions[next] - positions[next - 1]);
  return (values) => values[next - 1] + share * (values[next] - values[next - 1]);
}
