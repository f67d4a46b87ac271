import type { Lengths } from "../inspection/lengths.ts";
import { ACTIONS, type Chances, type Finding } from "./assessment.ts";
import { nameOf } from "./checks/check.ts";
import type { LostMotion } from "./corrected.ts";
import type { Judgement } from "./judgement.ts";
import { SURE_ENOUGH } from "./verdict.ts";

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
  withAll: Judgement,
  lone: readonly LostMotion[],
  lengths: Lengths,
  judged: (readings: readonly LostMotion[]) => Judgement,
): readonly Finding[] {
  const all = withAll.stations.flatMap((station) => station.readings);
  const decide = (suspects: readonly number[]): boolean => {
    const others = all.filter((reading) => !reading.from.some((index) => suspects.includes(index)));
    return (
      others.length > 0 &&
      others.length < all.length &&
      leading(judged(others).chances) !== leading(withAll.chances)
    );
  };
  const deciding = DOUBTING.filter((check) =>
    decide(findings.filter((each) => isDoubt(each, check)).flatMap(({ readings }) => readings)),
  );
  const stopped = findings.map((finding) =>
    deciding.some((check) => isDoubt(finding, check)) ? asStop(finding) : finding,
  );
  const named = new Set(
    stopped.filter(({ severity }) => severity === "stop").flatMap(({ readings }) => readings),
  );
  const unnamed = lone.filter(({ from }) => !from.some((index) => named.has(index)));
  const decides = decide(unnamed.flatMap(({ from }) => from));
  return decides ? [...stopped, toReadAgain(unnamed, lengths)] : stopped;
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
