import type { Units } from "../inspection/units.ts";
import type { ThreadRequest } from "./replacement.ts";

/** Axial running clearance that is aimed at where none is stated, in millimetres; up to twice it is good. */
export const USUAL_CLEARANCE = 0.025;

/** How a thread is cut and measured where nothing is said of it; lengths in millimetres, angles in degrees. */
export function usualWork(
  units: Units,
): Pick<ThreadRequest, "toolStands" | "workingClearance" | "sineBar" | "tap"> {
  return {
    toolStands: "axial",
    workingClearance: 3,
    sineBar: units === "mm" ? 100 : 127,
    tap: { chip: 0.05, flutes: 4, leadInTurns: 2, fullTurns: 4 },
  };
}
