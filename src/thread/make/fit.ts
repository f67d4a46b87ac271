import { tangent } from "../angles.ts";
import type { Dimensions, ThreadForm } from "../form.ts";
import type { ThreadSize } from "../size.ts";

/** Axial clearance between screw and nut in all, in millimetres: half of it on each flank. */
export interface Clearance {
  readonly from: number;
  readonly to: number;
}

/** What gives the running clearance: the nut at its basic size, the screw's thread thinner. Lengths in millimetres. */
export interface RunningFit {
  readonly clearance: Clearance;
  /** Pitch diameter of the screw; null for a square thread, whose clearance no diameter gives. */
  readonly screwPitch: { readonly max: number; readonly min: number } | null;
  readonly nutPitch: number;
  /** Axial thickness of the screw's thread at the basic pitch diameter. */
  readonly thickness: { readonly max: number; readonly min: number };
}

/**
 * The running fit for an axial clearance. A difference ΔE of the pitch diameters of nut and screw gives ΔE · tan α of
 * clearance; a square thread has none of it and is made thinner by the clearance itself.
 */
export function runningFit(form: ThreadForm, size: ThreadSize, clearance: Clearance): RunningFit {
  const { pitch } = form.diameters(size);
  const slope = tangent(form.halfAngle);
  return {
    clearance,
    screwPitch:
      form.halfAngle === 0
        ? null
        : { max: pitch - clearance.from / slope, min: pitch - clearance.to / slope },
    nutPitch: pitch,
    thickness: { max: size.pitch / 2 - clearance.from, min: size.pitch / 2 - clearance.to },
  };
}

/** The axial clearance that the extremes of given limits leave, in millimetres; null where a limit is missing. */
export function clearanceAtLimits(form: ThreadForm, { screw, nut }: Dimensions): Clearance | null {
  const { max: screwMax, min: screwMin } = screw.pitch;
  const { max: nutMax, min: nutMin } = nut.pitch;
  if (screwMax === null || screwMin === null || nutMax === null || nutMin === null) return null;
  const slope = tangent(form.halfAngle);
  return { from: (nutMin - screwMax) * slope, to: (nutMax - screwMin) * slope };
}
