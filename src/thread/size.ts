import { failed, type Outcome, succeeded } from "../inspection/problem.ts";
import { inDegrees } from "./angles.ts";

/** What names a thread of a given form. Lengths in millimetres. */
export interface ThreadSize {
  /** Nominal outside diameter of the screw. */
  readonly diameter: number;
  /** From one thread to the next, whatever the number of starts. */
  readonly pitch: number;
  readonly starts: number;
  readonly hand: "right" | "left";
}

const MOST_STARTS = 24;

/** Travel for one turn, in millimetres. */
export function leadOf({ pitch, starts }: Pick<ThreadSize, "pitch" | "starts">): number {
  return pitch * starts;
}

/** Lead angle in degrees at a diameter in millimetres: tan λ = starts × pitch ÷ (π × diameter). */
export function leadAngle(size: Pick<ThreadSize, "pitch" | "starts">, diameter: number): number {
  return inDegrees(Math.atan(leadOf(size) / (Math.PI * diameter)));
}

/** Refuses a size that no screw can have, whatever its form. */
export function checkedSize(size: ThreadSize): Outcome<ThreadSize> {
  const { diameter, pitch, starts } = size;
  for (const [where, length] of [
    ["diameter", diameter],
    ["pitch", pitch],
  ] as const) {
    if (!(length > 0 && Number.isFinite(length)))
      return failed(where, "must be greater than zero", `Give the ${where} of the thread.`);
  }
  if (!Number.isInteger(starts) || starts < 1 || starts > MOST_STARTS)
    return failed(
      "starts",
      `${starts} is not a number of starts`,
      `Give a whole number from 1 to ${MOST_STARTS}.`,
    );
  if (pitch >= diameter)
    return failed(
      "pitch",
      "it is as large as the diameter, which would leave no core",
      "Check the pitch and its unit; threads per inch are given as such, not as a pitch.",
    );
  return succeeded(size);
}
