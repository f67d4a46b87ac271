import { inDegrees, inRadians, tangent } from "../angles.ts";

/** How a blank is held for grinding one flank of a tool. Angles in degrees. */
export interface Held {
  /** Nose up, about an axis across the blank. */
  readonly pitched: number;
  /** About its own length, after it was pitched. */
  readonly rolled: number;
}

/** A ground flank as measured on the tool, angles in degrees. */
export interface GroundFlank {
  /** Between the edge and the blank's length, in its top face: half the included angle of the thread. */
  readonly edge: number;
  /** Clearance in the section square to the edge. */
  readonly squareToEdge: number;
  /** Clearance in the section square to the blank's length: what the lead angle asks for. */
  readonly side: number;
}

type Vector = readonly [number, number, number];

/**
 * Angle in degrees to set the plate to, from the line of the blank's length, so that the upright grinding plane meets
 * the top face at half the included angle. For a blank that is only pitched by t this is atan(tan α ÷ cos t), for one
 * that is only rolled atan(tan α · cos t).
 */
export function plateAngle(halfAngle: number, held: Held): number {
  // In the blank's own axes the plane's normal is sin φ · a + cos φ · b; the edge asks for x = y · tan α of it.
  const a = onBlank([1, 0, 0], held);
  const b = onBlank([0, 1, 0], held);
  const slope = tangent(halfAngle);
  return inDegrees(Math.atan2(b[1] * slope - b[0], a[0] - a[1] * slope));
}

/** What grinding on a plate at the given angle, in degrees, makes of a blank that is held so. */
export function groundFlank(plate: number, held: Held): GroundFlank {
  const [x, y, z] = onBlank([Math.sin(inRadians(plate)), Math.cos(inRadians(plate)), 0], held);
  return {
    edge: inDegrees(Math.atan2(x, y)),
    squareToEdge: inDegrees(Math.atan2(-z, Math.hypot(x, y))),
    side: inDegrees(Math.atan2(-z, y)),
  };
}

/** Height of the blocks under one end of a sine bar, in the unit of its length. */
export function sineBarHeight(length: number, angle: number): number {
  return length * Math.sin(inRadians(angle));
}

/** A direction of the grinder (x along the blank before it is tilted, z up) in the axes of the blank as it is held. */
function onBlank([x, y, z]: Vector, { pitched, rolled }: Held): Vector {
  const [t, r] = [inRadians(pitched), inRadians(rolled)];
  const along = x * Math.cos(t) + z * Math.sin(t);
  const upright = -x * Math.sin(t) + z * Math.cos(t);
  return [along, y * Math.cos(r) + upright * Math.sin(r), -y * Math.sin(r) + upright * Math.cos(r)];
}
