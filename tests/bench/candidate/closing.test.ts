import { describe, expect, it } from "vitest";
import { seededRandom } from "../../../src/analysis/statistics/random.ts";
import { closed } from "./closing.ts";

/** The least, over all stretches of places no longer than the nut that hold a place, of the greatest value in them. */
function byForce(values: readonly number[], places: readonly number[], length: number): readonly number[] {
  const last = places.length - 1;
  return places.map((_, i) => {
    let least = Number.POSITIVE_INFINITY;
    for (let from = 0; from <= i; from++) {
      for (let to = i; to <= last; to++) {
        if (places[to] - places[from] > length) continue;
        // A stretch that could be longer is not as long as the nut, unless the travel ends there.
        const ahead = to === last || places[to + 1] - places[from] > length;
        const behind = from === 0 || places[to] - places[from - 1] > length;
        if (!ahead && !behind) continue;
        least = Math.min(least, Math.max(...values.slice(from, to + 1)));
      }
    }
    return least;
  });
}

const closing = (values: readonly number[], places: readonly number[], length: number) => [
  ...closed(Float64Array.from(values), Float64Array.from(places), length),
];

describe("the closing of a profile over the nut", () => {
  it("fills a low place narrower than the nut, up to the lower of its sides", () => {
    expect(closing([3, 1, 1, 2, 2, 2], [0, 1, 2, 3, 4, 5], 2)).toEqual([3, 2, 2, 2, 2, 2]);
  });

  it("leaves a low place as wide as the nut, a narrow high place, and a low place at the travel's end", () => {
    expect(closing([3, 1, 1, 1, 3, 3], [0, 1, 2, 3, 4, 5], 2)).toEqual([3, 1, 1, 1, 3, 3]);
    expect(closing([1, 1, 5, 1, 1], [0, 1, 2, 3, 4], 1)).toEqual([1, 1, 5, 1, 1]);
    expect(closing([1, 3, 3, 3, 0], [0, 1, 2, 3, 4], 2)).toEqual([1, 3, 3, 3, 0]);
  });

  it("is what all stretches as long as the nut give by brute force", () => {
    const random = seededRandom(9);
    for (let i = 0; i < 60; i++) {
      const places = Array.from({ length: 12 }, () => random()).sort((a, b) => a - b);
      const values = places.map(() => random());
      const length = 0.4 * random();
      expect(closing(values, places, length)).toEqual(byForce(values, places, length));
    }
  });

  it("changes nothing when it is done again", () => {
    const random = seededRandom(11);
    for (let i = 0; i < 60; i++) {
      const places = Array.from({ length: 30 }, (_, k) => k / 30);
      const once = closing(
        places.map(() => random()),
        places,
        0.2,
      );
      expect(closing(once, places, 0.2)).toEqual(once);
    }
  });
});
