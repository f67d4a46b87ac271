import type { ThreadForm } from "../form.ts";
import { crestClearance } from "./trapezoidal30.ts";

/** Square thread: depth half the pitch, and clearance at the roots as a trapezoidal thread of that pitch has it. */
export const square = {
  name: "square",
  words: "square",
  halfAngle: 0,
  standard: null,
  system: "mm",
  diameters: ({ diameter, pitch }) => {
    const clearance = 2 * crestClearance(pitch);
    return {
      pitch: diameter - pitch / 2,
      screwMajor: diameter,
      screwMinor: diameter - pitch - clearance,
      nutMajor: diameter + clearance,
      nutMinor: diameter - pitch,
    };
  },
  rounding: null,
  classes: [],
  limits: () => null,
  remarks: [
    "No standard gives square threads: depth is half the pitch, with the root clearance of a trapezoidal thread of that pitch, and the running fit gives the limits.",
  ],
  sizes: [],
  share: 0.3,
} as const satisfies ThreadForm;
