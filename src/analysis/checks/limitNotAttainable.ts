import type { Finding } from "../assessment.ts";
import { isLimitAttainable } from "../decide/decision.ts";
import type { CheckInput } from "./check.ts";

/** A limit that parts in perfect order could not meet. */
export function limitNotAttainable({
  settings,
  lengths,
}: Pick<CheckInput, "settings" | "lengths">): readonly Finding[] {
  if (isLimitAttainable(settings)) return [];
  const least = settings.runningClearance + settings.endFloatAttainable;
  return [
    {
      check: "limit not attainable",
      severity: "stop",
      message: `The limit of ${lengths.lostMotion(settings.limit)} is less than running clearance and end float come to in parts in perfect order (${lengths.lostMotion(least)}). Choose a greater limit.`,
      readings: [],
    },
  ];
}
