import type { BasicDiameters } from "../form.ts";
import type { ThreadSize } from "../size.ts";

/** Height of the sharp triangle over a pitch of one: cos 30°. */
const SHARP = Math.sqrt(3) / 2;

/**
 * Diameters of the 60° profile, ISO 68-1, which unified threads share: d₂ = d − 3/4 H, D₁ = d − 5/4 H, and for a root
 * rounded to H/6 d₃ = d − 17/12 H.
 */
export function sixtyDegreeDiameters({ diameter, pitch }: ThreadSize): BasicDiameters {
  const sharp = SHARP * pitch;
  return {
    pitch: diameter - (3 / 4) * sharp,
    screwMajor: diameter,
    screwMinor: diameter - (17 / 12) * sharp,
    nutMajor: diameter,
    nutMinor: diameter - (5 / 4) * sharp,
  };
}

/** Crests and the root of the nut are flat, the root of the screw has a radius of H/6. */
export const SIXTY_DEGREE_ROUNDING = {
  rootRadius: (pitch: number) => (SHARP * pitch) / 6,
  nutRootRadius: null,
  crestDepth: () => 0,
} as const;

export const SIXTY_DEGREE_REMARKS: readonly string[] = [
  "Basic sizes of the 60° profile; limits of fastening threads do not apply to a screw that moves a slide.",
];
