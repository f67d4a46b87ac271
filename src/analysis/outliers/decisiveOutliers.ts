import type { Lengths } from "../../inspection/lengths.ts";
import { ACTIONS, type Chances, type Finding } from "../assessment.ts";
import { nameOf } from "../checks/check.ts";
import type { LostMotion } from "../correct/corrections.ts";
import type { Station } from "../correct/stations.ts";
import { REQUIRED_CHANCE } from "../decide/chooseVerdict.ts";

/** Checks whose warnings leave open whether the readings they name matter to the verdict. */
const OUTLIER_CHECKS = ["outlying reading", "negative lost motion", "outside the travel", "duplicate rows"];

/** The readings of a survey and what is known of outliers among them. */
export interface OutlierReview {
  /** Findings of every check. */
  readonly findings: readonly Finding[];
  readonly stations: readonly Station[];
  /** Readings of stations read once that stand out from the stations beside them; no check names them. */
  readonly toConfirm: readonly LostMotion[];
}

/**
 * A reading that stands out and decides the verdict by itself must be read again before a verdict is given. The
 * decision is repeated without the readings that a check names. If the outcome changes, they are decisive, and the
 * check's warning becomes a stop. Readings to confirm are treated the same way.
 *
 * @param allChances chances from all readings
 * @param chancesOfSubset chances from some of them
 * @returns the findings, with decisive warnings as stops and one more stop if readings to confirm are decisive
 */
export function stopDecisiveOutliers(
  { findings, stations, toConfirm }: OutlierReview,
  allChances: Chances,
  chancesOfSubset: (readings: readonly LostMotion[]) => Chances,
  lengths: Lengths,
): readonly Finding[] {
  const areDecisive = (indices: readonly number[]): boolean =>
    without(indices, stations).some((others) => outcomeOf(chancesOfSubset(others)) !== outcomeOf(allChances));
  const decisive = OUTLIER_CHECKS.filter((check) => areDecisive(readingsOf(check, findings)));
  const stopped = findings.map((finding) =>
    decisive.some((check) => isWarningOf(finding, check)) ? asStop(finding) : finding,
  );
  const unnamed = notNamedByStop(toConfirm, stopped);
  return areDecisive(unnamed.flatMap(({ from }) => from))
    ? [...stopped, readAgainFinding(unnamed, lengths)]
    : stopped;
}

/** Every subset of the readings that `stopDecisiveOutliers` may ask for, whichever checks turn out to be decisive. */
export function subsetsToSample({
  findings,
  stations,
  toConfirm,
}: OutlierReview): readonly (readonly LostMotion[])[] {
  const warning = OUTLIER_CHECKS.filter((check) => readingsOf(check, findings).length > 0);
  let combinations: readonly (readonly Finding[])[] = [findings];
  for (const check of warning) {
    combinations = combinations.flatMap((each) => [
      each,
      each.map((finding) => (isWarningOf(finding, check) ? asStop(finding) : finding)),
    ]);
  }
  return [
    ...warning.map((check) => readingsOf(check, findings)),
    ...combinations.map((each) => notNamedByStop(toConfirm, each).flatMap(({ from }) => from)),
  ].flatMap((indices) => without(indices, stations));
}

/** The readings except those from the given places in the file; none if these are all readings, or no reading. */
function without(
  indices: readonly number[],
  stations: readonly Station[],
): readonly (readonly LostMotion[])[] {
  const all = stations.flatMap(({ readings }) => readings);
  const others = all.filter(({ from }) => !from.some((index) => indices.includes(index)));
  return others.length > 0 && others.length < all.length ? [others] : [];
}

function notNamedByStop(
  readings: readonly LostMotion[],
  findings: readonly Finding[],
): readonly LostMotion[] {
  const stops = findings.filter(({ severity }) => severity === "stop");
  const named = new Set(stops.flatMap((stop) => stop.readings));
  return readings.filter(({ from }) => !from.some((index) => named.has(index)));
}

function readingsOf(check: string, findings: readonly Finding[]): readonly number[] {
  return findings.filter((each) => isWarningOf(each, check)).flatMap(({ readings }) => readings);
}

function isWarningOf(finding: Finding, check: string): boolean {
  return finding.check === check && finding.severity === "warning";
}

function asStop(finding: Finding): Finding {
  return {
    ...finding,
    severity: "stop",
    message: `${finding.message} This decides the verdict, so none is given yet.`,
  };
}

function readAgainFinding(readings: readonly LostMotion[], lengths: Lengths): Finding {
  const names = readings.map(
    (reading) => `${nameOf(reading, lengths)} (${lengths.lostMotion(reading.value)})`,
  );
  const [stand, them, decide] =
    readings.length === 1 ? ["stands", "it", "decides"] : ["stand", "them", "decide"];
  return {
    check: "reading that decides alone",
    severity: "stop",
    message: `${names.join(", ")} ${stand} out from the stations beside ${them} and ${decide} the verdict alone. Read ${them} again before anything is done.`,
    readings: readings.flatMap((reading) => reading.from),
  };
}

/** The class with the greatest chance, and whether that chance is enough for a verdict. */
function outcomeOf(chances: Chances): string {
  const [best] = [...ACTIONS].sort((a, b) => chances[b] - chances[a]);
  return chances[best] >= REQUIRED_CHANCE ? best : `perhaps ${best}`;
}
