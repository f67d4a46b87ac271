import type { Lengths } from "../../inspection/lengths.ts";
import type { Finding } from "../assessment.ts";
import { limitNotAttainable } from "../checks/limitNotAttainable.ts";
import type { LostMotion } from "../correct/corrections.ts";
import type { Station } from "../correct/stations.ts";
import { withStops } from "../outliers/decisiveOutliers.ts";
import { chancesOf, type Extremes } from "./decision.ts";
import { type DecisionResult, decideFromPosterior, type PosteriorSummary } from "./posteriorSummary.ts";
import type { Settings } from "./settings.ts";

/** What may be changed without the readings' coming to something else. Millimetres. */
export type Changeable = Pick<Settings, "limit" | "runningClearance" | "takeUpLeft">;

/**
 * What is kept of an assessment to decide anew at another limit, running clearance or take-up left: plain data, a few
 * numbers for each draw, that can be handed from one thread to another.
 */
export interface RetainedDraws extends PosteriorSummary {
  readonly settings: Settings;
  /** What the checks found, before doubts that decide the verdict are made stops. */
  readonly findings: readonly Finding[];
  readonly stations: readonly Station[];
  /** Readings of stations read once that stand out. */
  readonly lone: readonly LostMotion[];
  /** What some of the readings come to, by `keyOf` them: as many as may have to be asked without others. */
  readonly parts: ReadonlyMap<string, readonly Extremes[]>;
}

/** The same name for the same readings. */
export function keyOf(readings: readonly LostMotion[]): string {
  return readings.map(({ from }) => from.join("+")).join();
}

/**
 * What an assessment would decide at other settings. It is what a full assessment at these settings decides, for the
 * draws of the profile do not depend on them; a note on what scatter could hide stays as it was.
 */
export function whatIf(kept: RetainedDraws, change: Changeable, lengths: Lengths): DecisionResult {
  const settings = { ...kept.settings, ...change };
  const ofReadings = kept.findings.filter(({ check }) => check !== "limit not attainable");
  const findings = [...limitNotAttainable({ settings, lengths }), ...ofReadings];
  const chances = chancesOf(kept.extremes, settings);
  const judged = (readings: readonly LostMotion[]) => {
    const part = kept.parts.get(keyOf(readings));
    if (part === undefined) throw new Error("These readings were not judged by themselves.");
    return { chances: chancesOf(part, settings) };
  };
  const checks = withStops(findings, { stations: kept.stations, chances }, kept.lone, lengths, judged);
  return decideFromPosterior(kept, settings, checks);
}
