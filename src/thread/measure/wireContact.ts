import { inRadians } from "../angles.ts";
import { leadOf } from "../size.ts";
import type { Groove } from "./groove.ts";

/** The flank of a groove: straight in the axial section, z = a + t r, carried round by p a radian. */
interface Flank {
  readonly a: number;
  readonly t: number;
  readonly p: number;
}

const STEPS = 200;
/** The contact lies on the side that the helix leans to, less than this far round. */
const FARTHEST = Math.PI / 2;

/**
 * Distance of the centre of a wire from the axis of the screw, in millimetres, where it touches both flanks of the
 * helicoid.
 *
 * The wire is held by flat anvils and is free to turn between them. By the symmetry of the groove (half a turn about
 * the radius through its middle) and the balance of moments about that radius, both contacts push through the same
 * point of the wire's axis, so this point is half a wire from the nearest points of both flanks.
 *
 * @param pitchDiameter where thread and groove are both half a pitch wide
 * @param wire diameter of the wire
 */
export function wireCentreByContact(groove: Groove, pitchDiameter: number, wire: number): number {
  const alpha = inRadians(groove.halfAngle);
  const t = Math.tan(alpha);
  const flank = { a: groove.pitch / 4 - (pitchDiameter / 2) * t, t, p: leadOf(groove) / (2 * Math.PI) };
  const plain = wire / 2 / Math.sin(alpha) - flank.a / t;
  // A helix never lets the wire sink deeper than straight grooves do, and lifts it by less than its radius.
  return rootOf((centre) => distanceTo(flank, centre) - wire / 2, plain * 0.9, plain + wire);
}

/** Least distance of a point on the radius θ = 0, z = 0 from the flank. */
function distanceTo({ a, t, p }: Flank, centre: number): number {
  // At each angle the flank is a straight line, so its nearest point is known; the angle is searched for.
  const squared = (angle: number): number => {
    const offset = a + p * angle;
    const radius = (centre * Math.cos(angle) - t * offset) / (1 + t * t);
    const height = offset + t * radius;
    return radius * radius - 2 * radius * centre * Math.cos(angle) + centre * centre + height * height;
  };
  return Math.sqrt(Math.max(0, leastOf(squared, -FARTHEST, 0)));
}

/** The least value of a function with one minimum between two places, by golden section. */
function leastOf(of: (x: number) => number, from: number, to: number): number {
  const golden = (Math.sqrt(5) - 1) / 2;
  let [low, high] = [from, to];
  let inner = high - golden * (high - low);
  let outer = low + golden * (high - low);
  let [atInner, atOuter] = [of(inner), of(outer)];
  for (let step = 0; step < STEPS && high - low > 1e-12; step++) {
    if (atInner < atOuter) {
      [high, outer, atOuter] = [outer, inner, atInner];
      inner = high - golden * (high - low);
      atInner = of(inner);
    } else {
      [low, inner, atInner] = [inner, outer, atOuter];
      outer = low + golden * (high - low);
      atOuter = of(outer);
    }
  }
  return Math.min(atInner, atOuter);
}

/** Where a rising function passes zero, by halving. */
function rootOf(of: (x: number) => number, from: number, to: number): number {
  let [low, high] = [from, to];
  for (let step = 0; step < STEPS && high - low > 1e-13 * high; step++) {
    const middle = (low + high) / 2;
    if (of(middle) < 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
