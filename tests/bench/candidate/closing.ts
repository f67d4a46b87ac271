/**
 * The closing of a profile over the nut's length: the least profile not below it that a stiff nut can show. Wherever it
 * is low it is low over the whole length, but for what the travel's ends cut off (morphological closing, Serra 1982:
 * the greatest over each stretch as long as the nut, then the least over all such stretches that hold a place).
 *
 * @param places in order
 * @param length of the nut, in the unit of the places
 */
export function closed(values: Float64Array, places: Float64Array, length: number): Float64Array {
  const count = values.length;
  const greatest = new Float64Array(count);
  const result = new Float64Array(count);
  // Stretches from each place onwards, and those up to each place.
  greatestAhead(values, places, length, greatest);
  leastBehind(greatest, places, length, result);
  greatestBehind(values, places, length, greatest);
  leastAhead(greatest, places, length, result);
  return result;
}

const queue = { room: new Int32Array(512) };

function roomFor(count: number): Int32Array {
  if (queue.room.length < count) queue.room = new Int32Array(2 * count);
  return queue.room;
}

/** The greatest of the values from each place to a nut's length after it. */
function greatestAhead(values: Float64Array, places: Float64Array, length: number, into: Float64Array): void {
  const waiting = roomFor(values.length);
  let first = 0;
  let end = 0;
  for (let i = values.length - 1; i >= 0; i--) {
    while (end > first && values[waiting[end - 1]] <= values[i]) end--;
    waiting[end++] = i;
    while (places[waiting[first]] > places[i] + length) first++;
    into[i] = values[waiting[first]];
  }
}

/** The greatest of the values from a nut's length before each place to it. */
function greatestBehind(
  values: Float64Array,
  places: Float64Array,
  length: number,
  into: Float64Array,
): void {
  const waiting = roomFor(values.length);
  let first = 0;
  let end = 0;
  for (let i = 0; i < values.length; i++) {
    while (end > first && values[waiting[end - 1]] <= values[i]) end--;
    waiting[end++] = i;
    while (places[waiting[first]] < places[i] - length) first++;
    into[i] = values[waiting[first]];
  }
}

/** The least of the values from a nut's length before each place to it. */
function leastBehind(values: Float64Array, places: Float64Array, length: number, into: Float64Array): void {
  const waiting = roomFor(values.length);
  let first = 0;
  let end = 0;
  for (let i = 0; i < values.length; i++) {
    while (end > first && values[waiting[end - 1]] >= values[i]) end--;
    waiting[end++] = i;
    while (places[waiting[first]] < places[i] - length) first++;
    into[i] = values[waiting[first]];
  }
}

/** The lesser of what stands there and the least of the values from each place to a nut's length after it. */
function leastAhead(values: Float64Array, places: Float64Array, length: number, into: Float64Array): void {
  const waiting = roomFor(values.length);
  let first = 0;
  let end = 0;
  for (let i = values.length - 1; i >= 0; i--) {
    while (end > first && values[waiting[end - 1]] >= values[i]) end--;
    waiting[end++] = i;
    while (places[waiting[first]] > places[i] + length) first++;
    into[i] = Math.min(into[i], values[waiting[first]]);
  }
}
