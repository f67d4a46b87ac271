import type { Lengths } from "../inspection/lengths.ts";
import { ACTIONS, type Chances, type Finding } from "./assessment.ts";
import { nameOf } from "./checks/check.ts";
import type { LostMotion } from "./corrected.ts";
import type { Judgement } from "./judgement.ts";
import { SURE_ENOUGH } from "./verdict.ts";

/** How far a lone reading must stand out from both neighbours, in standard deviations, to be judged without. */
const FAR = 6;

/**
 * A reading that stands out and decides the verdict by itself is asked for again before any verdict is given.
 * Readings that stand out are judged without, all together; where that leads elsewhere, they decide. Those that
 * disagree with their repeats were found by a check, and become a stop; those without repeats are found here.
 *
 * @param findings of every check
 * @param withAll what all readings come to
 * @param judged what some of them come to
 */
export function withStops(
  findings: readonly Finding[],
  withAll: Judgement,
  lengths: Lengths,
  judged: (readings: readonly LostMotion[]) => Judgement,
): readonly Finding[] {
  const decides = (suspects: ReadonlySet<number>): boolean => {
    const all = withAll.stations.flatMap((station) => station.readings);
    const others = all.filter((reading) => !reading.from.some((index) => suspects.has(index)));
    return (
      others.length > 0 &&
      others.length < all.length &&
      leading(judged(others).chances) !== leading(withAll.chances)
    );
  };
  const outlying = new Set(findings.filter(standsOut).flatMap((finding) => finding.readings));
  const stopped = decides(outlying)
    ? findings.map((finding) => (standsOut(finding) ? asStop(finding) : finding))
    : findings;
  const lone = loneReadings(withAll);
  const loneSet = new Set(lone.flatMap((reading) => reading.from));
  return lone.length > 0 && decides(loneSet) ? [...stopped, toReadAgain(lone, lengths)] : stopped;
}

function standsOut({ check, severity }: Finding): boolean {
  return check === "outlying reading" && severity === "warning";
}

function asStop(finding: Finding): Finding {
  return {
    ...finding,
    severity: "stop",
    message: `${finding.message} It decides the verdict, so none is given yet.`,
  };
}

/** Readings of stations read once that lie above, or below, everything at the two stations to either side. */
function loneReadings({ stations, repeatability }: Judgement): readonly LostMotion[] {
  return stations.flatMap((station, i) => {
    const near = [...stations.slice(Math.max(0, i - 2), i), ...stations.slice(i + 1, i + 3)];
    if (station.readings.length > 1 || near.length < 2) return [];
    const means = near.map(({ mean }) => mean);
    const above = station.mean - Math.max(...means);
    const below = Math.min(...means) - station.mean;
    return Math.max(above, below) > FAR * repeatability ? station.readings : [];
  });
}

function toReadAgain(readings: readonly LostMotion[], lengths: Lengths): Finding {
  const names = readings.map(
    (reading) => `${nameOf(reading, lengths)} (${lengths.lostMotion(reading.value)})`,
  );
  return {
    check: "reading that decides alone",
    severity: "stop",
    message: `${names.join(", ")} ${readings.length === 1 ? "stands" : "stand"} out from the stations to either side and ${readings.length === 1 ? "decides" : "decide"} the verdict alone. Read ${readings.length === 1 ? "it" : "them"} again before anything is done.`,
    readings: readings.flatMap((reading) => reading.from),
  };
}

/** Where the chances lead, and whether far enough for a verdict. */
function leading(chances: Chances): string {
  const [best] = [...ACTIONS].sort((a, b) => chances[b] - chances[a]);
  return chances[best] >= SURE_ENOUGH ? best : `perhaps ${best}`;
}
