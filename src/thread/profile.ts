import { inRadians, tangent } from "./angles.ts";
import type { ThreadForm } from "./form.ts";

/** A point of a profile in the axial section: along the screw, and from its axis. Millimetres. */
export interface ProfilePoint {
  readonly x: number;
  readonly radius: number;
}

/** Diameters that a profile is drawn with, in millimetres. */
interface Diameters {
  readonly major: number;
  readonly pitch: number;
  readonly minor: number;
}

/** Chords that an arc is drawn with. */
const CHORDS = 12;

/**
 * The profile of a screw over one pitch, from the middle of one crest over the groove to the middle of the next; the
 * middle of the groove is at zero.
 */
export function screwProfile(form: ThreadForm, pitch: number, diameters: Diameters): readonly ProfilePoint[] {
  const { major, minor } = diameters;
  const half = halfGroove(form, pitch, diameters.pitch);
  const rootRadius = form.rounding?.rootRadius(pitch) ?? 0;
  const isCrestRound = (form.rounding?.crestDepth(pitch) ?? 0) > 0;
  const right: readonly ProfilePoint[] = [
    ...(rootRadius > 0 ? rootArc(form, minor / 2, rootRadius) : [{ x: half(minor / 2), radius: minor / 2 }]),
    ...(isCrestRound
      ? crestArc(form, pitch, major / 2, rootRadius)
      : [{ x: half(major / 2), radius: major / 2 }]),
    { x: pitch / 2, radius: major / 2 },
  ];
  return mirrored(right);
}

/**
 * The profile of a nut over one pitch, from the middle of one root over its ridge, at zero, to the next root. Where its
 * roots are rounded like the screw's, it is the screw's.
 */
export function nutProfile(form: ThreadForm, pitch: number, diameters: Diameters): readonly ProfilePoint[] {
  if ((form.rounding?.nutRootRadius ?? null) !== null) return screwProfile(form, pitch, diameters);
  const { major, minor } = diameters;
  const half = halfGroove(form, pitch, diameters.pitch);
  return mirrored([
    { x: half(minor / 2), radius: minor / 2 },
    { x: half(major / 2), radius: major / 2 },
    { x: pitch / 2, radius: major / 2 },
  ]);
}

/** Half the width of the screw's groove at a radius. */
function halfGroove(form: ThreadForm, pitch: number, pitchDiameter: number): (radius: number) => number {
  const slope = tangent(form.halfAngle);
  return (radius) => pitch / 4 + (radius - pitchDiameter / 2) * slope;
}

/** An arc from the bottom of a rounded root to where it meets the flank. */
function rootArc({ halfAngle }: ThreadForm, bottom: number, radius: number): readonly ProfilePoint[] {
  const full = Math.PI / 2 - inRadians(halfAngle);
  return steps().map((share) => ({
    x: radius * Math.sin(full * share),
    radius: bottom + radius * (1 - Math.cos(full * share)),
  }));
}

/** An arc from the flank to the top of a rounded crest. */
function crestArc(
  { halfAngle }: ThreadForm,
  pitch: number,
  top: number,
  radius: number,
): readonly ProfilePoint[] {
  const full = Math.PI / 2 - inRadians(halfAngle);
  return steps()
    .toReversed()
    .map((share) => ({
      x: pitch / 2 - radius * Math.sin(full * share),
      radius: top - radius * (1 - Math.cos(full * share)),
    }));
}

function steps(): readonly number[] {
  return Array.from({ length: CHORDS + 1 }, (_, index) => index / CHORDS);
}

function mirrored(right: readonly ProfilePoint[]): readonly ProfilePoint[] {
  return [...right.toReversed().map(({ x, radius }) => ({ x: -x || 0, radius })), ...right];
}
