import type { Lengths } from "../../inspection/lengths.ts";
import { ACTIONS, type Chances, type Finding } from "../assessment.ts";
import { nameOf } from "../checks/check.ts";
import type { LostMotion } from "../correct/corrections.ts";
import type { Station } from "../correct/stations.ts";
import { SURE_ENOUGH } from "../decide/chooseVerdict.ts";

interface Judged {
  readonly chances: Chances;
}

/** Checks that doubt some readings and leave it open whether that matters. */
const DOUBTING = ["outlying reading", "negative lost motion", "outside the travel", "duplicate rows"];

/**
 * A reading that stands out and decides the verdict by itself is asked for again before any verdict is given. The
 * survey is judged without the readings that a check doubts; where that leads elsewhere, they decide, and the
 * check's warning becomes a stop. So it is with readings that stand out where nothing was read twice, which no check
 * doubts.
 *
 * @param findings of every check
 * @param withAll what all readings come to
 * @param lone readings of stations read once that stand out from those beside them
 * @param judged what some of them come to
 */
export function withStops(
  findings: readonly Finding[],
  withAll: Judged & { readonly stations: readonly Station[] },
  lone: readonly LostMotion[],
  lengths: Lengths,
  judged: (readings: readonly LostMotion[]) => Judged,
): readonly Finding[] {
  const decide = (suspects: readonly number[]): boolean =>
    without(suspects, withAll.stations).some(
      (others) => leading(judged(others).chances) !== leading(withAll.chances),
    );
  const deciding = DOUBTING.filter((check) => decide(doubtedBy(check, findings)));
  const stopped = findings.map((finding) =>
    deciding.some((check) => isDoubt(finding, check)) ? asStop(finding) : finding,
  );
  const unnamed = unnamedIn(lone, stopped);
  const decides = decide(unnamed.flatMap(({ from }) => from));
  return decides ? [...stopped, toReadAgain(unnamed, lengths)] : stopped;
}

/** Every part of the readings that `withStops` may ask to be judged, whatever comes of the others. */
export function partsToJudge(
  findings: readonly Finding[],
  stations: readonly Station[],
  lone: readonly LostMotion[],
): readonly (readonly LostMotion[])[] {
  const doubting = DOUBTING.filter((check) => doubtedBy(check, findings).length > 0);
  let stopped: readonly (readonly Finding[])[] = [findings];
  for (const check of doubting) {
    stopped = stopped.flatMap((way) => [
      way,
      way.map((finding) => (isDoubt(finding, check) ? asStop(finding) : finding)),
    ]);
  }
  return [
    ...doubting.map((check) => doubtedBy(check, findings)),
    ...stopped.map((way) => unnamedIn(lone, way).flatMap(({ from }) => from)),
  ].flatMap((suspects) => without(suspects, stations));
}

/** The readings but for those with the given places in the file: nothing where these are all, or none. */
function without(
  suspects: readonly number[],
  stations: readonly Station[],
): readonly (readonly LostMotion[])[] {
  const all = stations.flatMap(({ readings }) => readings);
  const others = all.filter(({ from }) => !from.some((index) => suspects.includes(index)));
  return others.length > 0 && others.length < all.length ? [others] : [];
}

/** Those of the readings that no stop names. */
function unnamedIn(lone: readonly LostMotion[], findings: readonly Finding[]): readonly LostMotion[] {
  const stops = findings.filter(({ severity }) => severity === "stop");
  const named = new Set(stops.flatMap(({ readings }) => readings));
  return lone.filter(({ from }) => !from.some((index) => named.has(index)));
}

function doubtedBy(check: string, findings: readonly Finding[]): readonly number[] {
  return findings.filter((each) => isDoubt(each, check)).flatMap(({ readings }) => readings);
}

function isDoubt(finding: Finding, check: string): boolean {
  return finding.check === check && finding.severity === "warning";
}

function asStop(finding: Finding): Finding {
  return {
    ...finding,
    severity: "stop",
    message: `${finding.message} This decides the verdict, so none is given yet.`,
  };
}

function toReadAgain(readings: readonly LostMotion[], lengths: Lengths): Finding {
  const names = readings.map(
    (reading) => `${nameOf(reading, lengths)} (${lengths.lostMotion(reading.value)})`,
  );
  return {
    check: "reading that decides alone",
    severity: "stop",
    message: `${names.join(", ")} ${readings.length === 1 ? "stands" : "stand"} out from the stations beside ${readings.length === 1 ? "it" : "them"} and ${readings.length === 1 ? "decides" : "decide"} the verdict alone. Read ${readings.length === 1 ? "it" : "them"} again before anything is done.`,
    readings: readings.flatMap((reading) => reading.from),
  };
}

/** Where the chances lead, and whether far enough for a verdict. */
function leading(chances: Chances): string {
  const [best] = [...ACTIONS].sort((a, b) => chances[b] - chances[a]);
  return chances[best] >= SURE_ENOUGH ? best : `perhaps ${best}`;
}
