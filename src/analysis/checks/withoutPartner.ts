import type { Lengths } from "../../inspection/lengths.ts";
import type { Finding } from "../assessment.ts";
import { pairsAt, type Target, type TargetReading, targetsOf } from "../correct/targets.ts";
import type { Check } from "./check.ts";

/** How many readings are named one by one. */
const MOST_NAMED = 4;

/**
 * Positioning readings without a reading from the other side at the same target in the same run, and runs with more
 * than one reading from one side at one target.
 */
export const withoutPartner: Check = ({ survey, lengths }) => {
  const targets = targetsOf(survey.readings);
  const findings: Finding[] = [];
  const unpaired = targets.flatMap(unpairedAt);
  if (unpaired.length > 0) {
    findings.push({
      check: "reading without its partner",
      severity: "warning",
      message: `There is no reading from the other side in the same run for ${namesOf(unpaired, lengths)}, so no lost motion comes of ${unpaired.length === 1 ? "it" : "them"}. Take what is missing, or correct the run.`,
      readings: indicesOf(unpaired),
    });
  }
  const repeated = targets.flatMap(({ advancing, retracting }) =>
    [advancing, retracting].flatMap(sharingRun),
  );
  if (repeated.length > 0) {
    findings.push({
      check: "run given twice",
      severity: "warning",
      message: `One run was given more than once from one side: ${namesOf(repeated, lengths)}. The first was taken with the first from the other side. Correct the run, or strike what was read in error.`,
      readings: indicesOf(repeated),
    });
  }
  return findings;
};

function unpairedAt(target: Target): readonly TargetReading[] {
  const paired = pairsAt(target).flatMap(({ advancing, retracting }) => [advancing, retracting]);
  return [...target.advancing, ...target.retracting].filter((reading) => !paired.includes(reading));
}

/** Of the readings from one side at one target, those that share a run with another. */
function sharingRun(side: readonly TargetReading[]): readonly TargetReading[] {
  return side.filter((reading) =>
    side.some((other) => other !== reading && other.item.run === reading.item.run),
  );
}

/** `reading 7 (advancing at 120 mm, run 3)`, counted from 1, as on the page. */
function namesOf(readings: readonly TargetReading[], lengths: Lengths): string {
  const names = readings
    .slice(0, MOST_NAMED)
    .map(
      ({ item, index }) =>
        `reading ${index + 1} (${item.direction} at ${lengths.position(item.target)}, run ${item.run})`,
    );
  const others = readings.length - names.length;
  return `${names.join(", ")}${others === 0 ? "" : ` and ${others} more`}`;
}

function indicesOf(readings: readonly TargetReading[]): readonly number[] {
  return readings.map(({ index }) => index).sort((a, b) => a - b);
}
