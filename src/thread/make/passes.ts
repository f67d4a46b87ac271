import { inRadians, tangent } from "../angles.ts";
import type { ThreadForm } from "../form.ts";
import { areaTo, type GrooveSection } from "./section.ts";

/** One pass of a single-point tool, all from the first touch on. Lengths in millimetres. */
export interface Pass {
  /** Depth reached on the radius: straight infeed of the cross slide. */
  readonly depth: number;
  /** Infeed along the flank, the compound set at half the included angle. */
  readonly alongFlank: number;
  /** How far that moves the tool along the screw. */
  readonly sideways: number;
}

/** The first pass is no deeper than this, in millimetres. */
const FIRST_DEPTH = 0.25;
const FEWEST = 4;
const MOST = 60;

/**
 * Passes that each take an equal share of the section which a tool with the thread's own form cuts: its tip is the root
 * flat, so a pass widens the cut at both flanks.
 *
 * @param section the groove of the screw
 */
export function passTable(form: ThreadForm, section: GrooveSection): readonly Pass[] {
  const tip = Math.max(0, section.mouth - section.narrowing * section.depth);
  // Seen from the crest, a form tool cuts a section that widens as it goes down.
  const cut: GrooveSection = { mouth: tip, narrowing: -section.narrowing, depth: section.depth };
  const whole = areaTo(cut, cut.depth);
  const first = areaTo(cut, Math.min(FIRST_DEPTH, cut.depth));
  const count = Math.min(MOST, Math.max(FEWEST, Math.ceil(whole / first)));
  return Array.from({ length: count }, (_, index) => {
    const depth = depthOfArea(cut, (whole * (index + 1)) / count);
    return {
      depth,
      alongFlank: depth / Math.cos(inRadians(form.halfAngle)),
      sideways: depth * tangent(form.halfAngle),
    };
  });
}

function depthOfArea({ mouth, narrowing }: GrooveSection, area: number): number {
  if (narrowing === 0) return area / mouth;
  return (2 * area) / (mouth + Math.sqrt(mouth * mouth - 2 * narrowing * area));
}
