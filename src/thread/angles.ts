/** Degrees as radians. */
export function inRadians(degrees: number): number {
  return (degrees * Math.PI) / 180;
}

/** Radians as degrees. */
export function inDegrees(radians: number): number {
  return (radians * 180) / Math.PI;
}

/** Tangent of an angle in degrees. */
export function tangent(degrees: number): number {
  return Math.tan(inRadians(degrees));
}
