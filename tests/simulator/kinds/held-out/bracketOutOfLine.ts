import { between, logBetween } from "../../wear.ts";
import type { Kind } from "../kind.ts";

/**
 * HELD OUT: never to be used in developing the model, only to test it when it is done.
 *
 * The nut's bracket is out of line with the screw: near the bearing the screw cannot give and is pressed against the
 * nut, with a force that falls as the cube of the free length grows. How often the slide stands at a place follows a
 * beta distribution. The flanks bear the force to different powers.
 */
export const bracketOutOfLine: Kind = {
  name: "held out 2",
  wear: (random, { travel, engaged }) => {
    const free = between(random, 0.2, 1) * travel;
    const [a, b] = [between(random, 0.6, 3), between(random, 0.6, 3)];
    const stiffness = (place: number) => (free / (free + Math.max(0, place + engaged / 2))) ** 3;
    const visits = (place: number): number => {
      const share = (place + engaged / 2) / (travel + engaged);
      return Math.max(0.01, share) ** (a - 1) * Math.max(0.01, 1 - share) ** (b - 1);
    };
    const mirrored = random() < 0.5;
    const depths = [logBetween(random, 0.02, 0.3), logBetween(random, 0.01, 0.15)];
    const powers = [between(random, 0.5, 1), between(random, 0.2, 1)];
    const flank = (which: number) => (place: number) => {
      const at = mirrored ? travel - place : place;
      const worn = stiffness(at) ** powers[which] * visits(at);
      return depths[which] * (worn / (1 + worn));
    };
    return [flank(0), flank(1)];
  },
};
