import { between, logBetween } from "../../wear.ts";
import type { Kind } from "../kind.ts";

/**
 * HELD OUT: never to be used in developing the model, only to test it when it is done.
 *
 * Oil reaches the screw at a few points and is dragged along from there: wear grows with the distance from the nearest
 * one, and the place where the slide is parked has rusted on one flank.
 */
export const oilPoints: Kind = {
  name: "held out 1",
  wear: (random, { travel, engaged }) => {
    const points = Array.from({ length: 1 + Math.floor(random() * 3) }, () => between(random, 0, 1) * travel);
    const carried = between(random, 0.1, 0.5) * travel;
    const dry = logBetween(random, 0.03, 0.35);
    const power = between(random, 0.7, 2);
    const oiled = (place: number): number => {
      const nearest = points.reduce(
        (least, point) => Math.min(least, Math.abs(place - point)),
        Number.POSITIVE_INFINITY,
      );
      return dry * (1 - Math.exp(-((nearest / carried) ** power)));
    };
    const parked = between(random, 0, 1) * travel;
    const rust = random() < 0.5 ? 0 : logBetween(random, 0.01, 0.1);
    const reach = between(random, 0.6, 1.4) * engaged;
    const share = between(random, 0.25, 0.75);
    return [
      (place) => share * oiled(place) + (Math.abs(place - parked) < reach ? rust : 0),
      (place) => (1 - share) * oiled(place),
    ];
  },
};
