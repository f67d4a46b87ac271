import type { PlannableSlide } from "../../inspection/plannableSlide.ts";
import { HOLDS_LOAD, ISOLATE, MAKER_FIRST } from "../cautions.ts";

/** What is done before the first reading, in order. */
export const SET_UP: readonly string[] = [
  "Machine isolated",
  "Slide locks off",
  "Gib set; a taper gib without endwise float",
  "Nut bracket tight",
  "Handwheel's dial ring locked",
  "Indicator in line with the screw, its stand tight",
  "End float measured first",
];

export const END_FLOAT_HOW =
  "Indicator on the end of the screw. Drive the slide a little each way under its own drag; the sweep on reversal is the end float. It is part of every reading, the same everywhere, and no nut adjustment removes it. Pushing and pulling the handwheel would show only the lesser of it and the nut's clearance.";

/** What holds for every reading. */
export const APPROACH = "Make every approach longer than the lost motion.";

/** The cautions for the one who reads. */
export function planCautions({ holdsLoad, nut }: PlannableSlide): readonly string[] {
  return [
    ISOLATE,
    ...(holdsLoad === true ? [HOLDS_LOAD, "Secure what the screw holds up before you start."] : []),
    ...(nut?.kind === "spring-loaded"
      ? [
          "The nut is spring-loaded: a reading shows its wear only if the force you read with exceeds the spring. Note whether it did.",
        ]
      : []),
    MAKER_FIRST,
  ];
}
