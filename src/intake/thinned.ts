import { isPair, isPositioning } from "../inspection/readingShapes.ts";
import type { Reading } from "../inspection/schema.ts";

/**
 * At most so many of the readings of a long log, such as a cable writes, standing for all of them: of every short
 * stretch of the travel the same number, evenly spaced in order of size; where that is one, the median. They are
 * readings as they were read, in their order. Struck ones are left out. The analysis condenses long logs in the same
 * way, so it comes to the same from these.
 */
export function thinned(readings: readonly Reading[], most: number): readonly Reading[] {
  if (readings.length <= most) return readings;
  const stretches = new Map<number, number[]>();
  const { least, width } = stretchesOf(readings, most);
  for (const [index, reading] of readings.entries()) {
    if (reading.excluded !== undefined) continue;
    // The last stretch takes in the end of the span.
    const stretch = Math.min(most - 1, Math.floor((placeOf(reading) - least) / width) || 0);
    const others = stretches.get(stretch);
    if (others === undefined) stretches.set(stretch, [index]);
    else others.push(index);
  }
  const each = Math.max(1, Math.floor(most / stretches.size));
  return [...stretches.values()]
    .flatMap((indexes) => evenlySpaced(readings, indexes, each))
    .sort((a, b) => a - b)
    .flatMap((index) => readings[index] ?? []);
}

function stretchesOf(readings: readonly Reading[], count: number) {
  let least = Number.POSITIVE_INFINITY;
  let greatest = Number.NEGATIVE_INFINITY;
  for (const reading of readings) {
    least = Math.min(least, placeOf(reading));
    greatest = Math.max(greatest, placeOf(reading));
  }
  return { least, width: (greatest - least) / count };
}

/** Of the readings at the given indexes, so many at most, evenly spaced in order of size. */
function evenlySpaced(
  readings: readonly Reading[],
  indexes: readonly number[],
  count: number,
): readonly number[] {
  if (indexes.length <= count) return indexes;
  const sizeAt = (index: number): number => {
    const reading = readings[index];
    return reading === undefined ? 0 : sizeOf(reading);
  };
  const sizes = Float64Array.from(indexes, sizeAt).sort();
  const wanted = Array.from({ length: count }, (_, order) => {
    return sizes[Math.floor(((order + 0.5) / count) * sizes.length)] ?? 0;
  });
  return indexes.filter((index) => {
    const at = wanted.length === 0 ? -1 : wanted.indexOf(sizeAt(index));
    if (at !== -1) wanted.splice(at, 1);
    return at !== -1;
  });
}

function placeOf(reading: Reading): number {
  return isPositioning(reading) ? reading.target : reading.position;
}

function sizeOf(reading: Reading): number {
  if (isPair(reading)) return reading.advancing - reading.retracting;
  return isPositioning(reading) ? reading.reading - reading.target : reading.backlash;
}
