import { tangent } from "../angles.ts";
import type { ThreadForm } from "../form.ts";

/** The groove of a thread in the axial section: how wide it is, from its crest to its root. Millimetres. */
export interface GrooveSection {
  /** Width at the crest side, where cutting begins. */
  readonly mouth: number;
  /** By how much it narrows for a millimetre of depth, on both flanks together. */
  readonly narrowing: number;
  readonly depth: number;
}

/**
 * The groove between two diameters, crest and root, of a thread whose groove is half a pitch wide at the pitch
 * diameter. Rounded roots are taken as the flat groove that they are rounded from.
 */
export function grooveSection(
  form: ThreadForm,
  pitch: number,
  pitchDiameter: number,
  crest: number,
  root: number,
): GrooveSection {
  const slope = tangent(form.halfAngle);
  return {
    mouth: pitch / 2 + Math.abs(crest - pitchDiameter) * slope,
    narrowing: 2 * slope,
    depth: Math.abs(crest - root) / 2,
  };
}

/** Section that is cut away down to a depth, in square millimetres. */
export function areaTo({ mouth, narrowing }: GrooveSection, depth: number): number {
  return mouth * depth - (narrowing / 2) * depth * depth;
}

/** The depth, in millimetres, down to which a share of the whole section lies. */
export function depthOfShare(section: GrooveSection, share: number): number {
  const area = share * areaTo(section, section.depth);
  const { mouth, narrowing } = section;
  if (narrowing === 0) return area / mouth;
  // The smaller root of narrowing/2 · x² − mouth · x + area = 0, in the form that does not cancel.
  return (2 * area) / (mouth + Math.sqrt(Math.max(0, mouth * mouth - 2 * narrowing * area)));
}
