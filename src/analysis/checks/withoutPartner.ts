import type { Lengths } from "../../inspection/lengths.ts";
import type { Finding } from "../assessment.ts";
import { partnersAt, type Target, type TargetReading, targetsOf } from "../correct/targets.ts";
import type { Check } from "./check.ts";

/** Readings are named one by one up to so many. */
const MOST_NAMED = 4;

/**
 * Positioning readings with none from the other side at the same target in the same run, and runs that hold more
 * than one reading from one side at one target. It is so or it is not: no chance enters.
 */
export const withoutPartner: Check = ({ survey, lengths }) => {
  const targets = targetsOf(survey.readings);
  const findings: Finding[] = [];
  const alone = targets.flatMap(aloneAt);
  if (alone.length > 0) {
    findings.push({
      check: "reading without its partner",
      severity: "warning",
      message: `There is no reading from the other side in the same run for ${named(alone, lengths)}, so no lost motion comes of ${alone.length === 1 ? "it" : "them"}. Take what is missing, or correct the run.`,
      readings: indicesOf(alone),
    });
  }
  const again = targets.flatMap(({ advancing, retracting }) => [advancing, retracting].flatMap(ofOneRun));
  if (again.length > 0) {
    findings.push({
      check: "run given twice",
      severity: "warning",
      message: `One run was given more than once from one side: ${named(again, lengths)}. The first was taken with the first from the other side. Correct the run, or strike what was read in error.`,
      readings: indicesOf(again),
    });
  }
  return findings;
};

function aloneAt(target: Target): readonly TargetReading[] {
  const paired = partnersAt(target).flatMap(({ advancing, retracting }) => [advancing, retracting]);
  return [...target.advancing, ...target.retracting].filter((reading) => !paired.includes(reading));
}

/** Of the readings from one side at one target, those that share their run with another. */
function ofOneRun(side: readonly TargetReading[]): readonly TargetReading[] {
  return side.filter((reading) =>
    side.some((other) => other !== reading && other.item.run === reading.item.run),
  );
}

/** `reading 7 (advancing at 120 mm, run 3)`, counted from 1 for the reader. */
function named(readings: readonly TargetReading[], lengths: Lengths): string {
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
