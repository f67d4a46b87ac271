import { failed, type Outcome, succeeded } from "../../inspection/problem.ts";
import { inDegrees } from "../angles.ts";
import type { ThreadForm } from "../form.ts";
import { leadOf, type ThreadSize } from "../size.ts";
import { depthOfShare, grooveSection } from "./section.ts";

/** How a tap is made. */
export interface TapPlan {
  /** Thickest chip that a tooth may take on the radius, in millimetres. */
  readonly chip: number;
  /** Teeth in a turn. */
  readonly flutes: number;
  /** Turns of lead-in taper before each step's full diameter. */
  readonly leadInTurns: number;
  /** Turns at the last step's full diameter. */
  readonly fullTurns: number;
  /** How many steps; as many as the chip allows where it is not given. */
  readonly steps?: number;
}

export interface TapStep {
  /** Outside diameter, in millimetres. */
  readonly diameter: number;
  /** Share of the thread's section cut when this step has passed. */
  readonly share: number;
  /** What each tooth of the step's lead-in taper takes on the radius, in millimetres. */
  readonly chip: number;
  /** Angle of the lead-in taper to the axis, in degrees. */
  readonly taper: number;
}

/** A tap made for a nut. Lengths in millimetres. */
export interface Tap {
  /** What the nut is bored to. */
  readonly bore: number;
  /** Pitch diameter of every step's thread. */
  readonly pitchDiameter: number;
  /** Diameter of the core between the threads, clear of the bore. */
  readonly core: number;
  readonly steps: readonly TapStep[];
  readonly leadIn: number;
  readonly full: number;
  /** Length of all the thread, where the steps stand behind one another on one tap. */
  readonly length: number;
}

const MOST_STEPS = 200;

/**
 * A tap whose steps each cut an equal share of the thread's section, with as many steps as keep the thickest chip
 * within what is allowed: the rise of a step on the radius is shared by the teeth of its lead-in taper.
 *
 * @param nut diameters of the nut's thread, in millimetres
 */
export function tapFor(
  form: ThreadForm,
  size: ThreadSize,
  nut: { readonly major: number; readonly pitch: number; readonly minor: number },
  core: number,
  plan: TapPlan,
): Outcome<Tap> {
  const teeth = plan.flutes * plan.leadInTurns;
  const section = grooveSection(form, size.pitch, nut.pitch, nut.minor, nut.major);
  const depths = (steps: number): readonly number[] =>
    Array.from({ length: steps + 1 }, (_, index) => depthOfShare(section, index / steps));
  const thickest = (steps: number): number => Math.max(...rises(depths(steps)).map((rise) => rise / teeth));
  const count = plan.steps ?? firstWhere((steps) => thickest(steps) <= plan.chip + 1e-9);
  if (count === null)
    return failed(
      "chip",
      `more than ${MOST_STEPS} steps would be needed to keep chips so thin`,
      "Allow a thicker chip, or more flutes or turns of lead-in.",
    );
  const reached = depths(count);
  const leadIn = plan.leadInTurns * leadOf(size);
  const full = plan.fullTurns * leadOf(size);
  const steps = rises(reached).map((rise, index) => ({
    diameter: nut.minor + 2 * (reached[index + 1] ?? 0),
    share: (index + 1) / count,
    chip: rise / teeth,
    taper: inDegrees(Math.atan(rise / leadIn)),
  }));
  return succeeded({
    bore: nut.minor,
    pitchDiameter: nut.pitch,
    core,
    steps,
    leadIn,
    full,
    length: count * (leadIn + leadOf(size)) + full,
  });
}

function rises(depths: readonly number[]): readonly number[] {
  return depths.slice(1).map((depth, index) => depth - (depths[index] ?? 0));
}

function firstWhere(holds: (steps: number) => boolean): number | null {
  for (let steps = 1; steps <= MOST_STEPS; steps++) if (holds(steps)) return steps;
  return null;
}
