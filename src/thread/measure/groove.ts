import { tangent } from "../angles.ts";

/** A thread's groove between two straight flanks, as wires meet it. Lengths in millimetres. */
export interface Groove {
  /** Half the included angle, in degrees; greater than zero. */
  readonly halfAngle: number;
  readonly pitch: number;
  readonly starts: number;
}

/** Axial thickness of the thread, in millimetres, at the basic pitch diameter, for a pitch diameter as made. */
export function threadThickness(
  { halfAngle, pitch }: Groove,
  basicPitchDiameter: number,
  pitchDiameter: number,
): number {
  return pitch / 2 - (basicPitchDiameter - pitchDiameter) * tangent(halfAngle);
}
