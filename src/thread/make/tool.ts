import { inRadians, tangent } from "../angles.ts";
import type { ThreadForm } from "../form.ts";
import { leadAngle, type ThreadSize } from "../size.ts";

/** A single-point tool for a thread. Lengths in millimetres, angles in degrees. */
export interface Tool {
  /** Flat at the tip; null where the root is rounded. */
  readonly tipWidth: number | null;
  /** Radius at the tip; null where the root is flat. */
  readonly tipRadius: number | null;
  /** From crest to root, on the radius. */
  readonly depth: number;
  /** Side clearance of the edge that leads in the direction of the feed, to the vertical. */
  readonly leadingClearance: number;
  /** Side clearance of the other edge; where it is negative that side leans the other way. */
  readonly trailingClearance: number;
}

/** What a tool is ground for. Diameters as made, in millimetres. */
export interface Cut {
  readonly pitchDiameter: number;
  /** Where the tip cuts: the minor diameter of a screw, the major diameter of a nut. */
  readonly root: number;
  readonly crest: number;
  /** Square to the axis of the screw, or tilted to stand square to the helix. */
  readonly stands: "axial" | "square";
  /** Working clearance on each side, in degrees. */
  readonly workingClearance: number;
}

/**
 * The tool that cuts the groove of a screw, or of a nut where the root is the larger diameter. Its tip is
 * P/2 − |E − root| tan α, × cos λ where it stands square to the helix; the leading edge clears the helix at the smaller
 * diameter, the trailing edge at the larger one.
 */
export function toolFor(form: ThreadForm, size: ThreadSize, cut: Cut): Tool {
  const { pitchDiameter, root, crest, stands, workingClearance } = cut;
  const isScrew = root < crest;
  const [outer, inner] = isScrew ? [crest, root] : [root, crest];
  const radius = (isScrew ? form.rounding?.rootRadius : form.rounding?.nutRootRadius) ?? null;
  const axialTip = size.pitch / 2 - Math.abs(pitchDiameter - root) * tangent(form.halfAngle);
  const tilt = stands === "square" ? Math.cos(inRadians(leadAngle(size, pitchDiameter))) : 1;
  return {
    tipWidth: radius === null ? axialTip * tilt : null,
    tipRadius: radius === null ? null : radius(size.pitch),
    depth: (outer - inner) / 2,
    leadingClearance: leadAngle(size, inner) + workingClearance,
    trailingClearance: workingClearance - leadAngle(size, outer),
  };
}
