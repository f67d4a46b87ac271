import { failed, type Outcome, succeeded } from "../../inspection/problem.ts";
import { inRadians } from "../angles.ts";
import { basicDimensions, type ThreadForm } from "../form.ts";
import type { ThreadSize } from "../size.ts";
import type { Groove } from "./groove.ts";

/** Wires that suit a thread, diameters in millimetres. */
export interface WireRange {
  /** Touches the flanks at the pitch line: P ÷ (2 cos α), so that an error of the flank angle hardly counts. */
  readonly best: number;
  /** The least that stands above the crests and clear of the root. */
  readonly least: number;
  /** The largest that still touches straight flanks. */
  readonly largest: number;
}

/** The groove of a form's screw; null for a square thread, which wires do not centre in. */
export function grooveOf({ halfAngle }: ThreadForm, { pitch, starts }: ThreadSize): Groove | null {
  return halfAngle > 0 ? { halfAngle, pitch, starts } : null;
}

/**
 * The wires that a screw of basic size can be measured over. The least is (D − E + (P/2) cot α) ÷ (1 + 1/sin α), or
 * more where the root would hold it up (stub forms); the largest (D − E + (P/2) cot α) sin α ÷ cos²α, with D the
 * diameter up to which flanks are straight.
 */
export function wireRange(form: ThreadForm, size: ThreadSize, groove: Groove): WireRange {
  const { pitch, screwMajor, screwMinor } = form.diameters(size);
  const alpha = inRadians(groove.halfAngle);
  const [sine, cosine] = [Math.sin(alpha), Math.cos(alpha)];
  const sharp = ((groove.pitch / 2) * cosine) / sine;
  const straightTo = screwMajor - 2 * (form.rounding?.crestDepth(groove.pitch) ?? 0);
  const aboveCrest = (screwMajor - pitch + sharp) / (1 + 1 / sine);
  const clearOfRoot = (screwMinor - pitch + sharp) / (1 / sine - 1);
  return {
    best: groove.pitch / (2 * cosine),
    least: Math.max(aboveCrest, clearOfRoot),
    largest: ((straightTo - pitch + sharp) * sine) / cosine ** 2,
  };
}

/** The wire to measure over: the one asked for if it fits, else the best, or what is nearest to it and fits. */
export function chosenWire({ best, least, largest }: WireRange, asked?: number): Outcome<number> {
  if (asked === undefined) return succeeded(Math.min(largest, Math.max(least, best)));
  if (asked >= least && asked <= largest) return succeeded(asked);
  const reason =
    asked < least
      ? "it is too thin: it would lie below the crests or on the root"
      : "it is too thick: it would rest on the crests, not on the flanks";
  return failed("wire", reason, "Take a wire between the least and the largest.");
}

/** Whether a pitch diameter may be that of a screw of this size: between core and outside. */
export function isPitchDiameter(form: ThreadForm, size: ThreadSize, diameter: number): boolean {
  const { screw } = basicDimensions(form, size);
  return diameter > (screw.minor.max ?? 0) && diameter < (screw.major.max ?? 0);
}
