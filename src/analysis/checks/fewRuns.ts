import { targetsOf } from "../correct/targets.ts";
import { STANDARD_RUNS } from "../positioning/positioning.ts";
import type { Check } from "./check.ts";

/** Positioning readings of fewer runs than ISO 230-2 requires. */
export const fewRuns: Check = ({ survey }) => {
  const short = targetsOf(survey.readings)
    .flatMap(({ advancing, retracting }) => [advancing, retracting])
    .filter((side) => side.length > 0 && side.length < STANDARD_RUNS);
  if (short.length === 0) return [];
  const fewest = Math.min(...short.map((side) => side.length));
  return [
    {
      check: "fewer runs than the standard asks for",
      severity: "note",
      message: `ISO 230-2 asks for ${STANDARD_RUNS} runs each way at every target, and here there are as few as ${fewest}: its figures are computed, and are less sure than they look.`,
      readings: short
        .flat()
        .map(({ index }) => index)
        .sort((a, b) => a - b),
    },
  ];
};
