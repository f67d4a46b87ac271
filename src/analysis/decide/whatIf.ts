import type { Lengths } from "../../inspection/lengths.ts";
import type { Finding } from "../assessment.ts";
import { limitNotAttainable } from "../checks/limitNotAttainable.ts";
import type { LostMotion } from "../correct/corrections.ts";
import type { Station } from "../correct/stations.ts";
import { stopDecisiveOutliers } from "../outliers/decisiveOutliers.ts";
import { chancesOf, type Extremes } from "./decision.ts";
import { type DecisionResult, decideFromPosterior, type PosteriorSummary } from "./posteriorSummary.ts";
import type { Settings } from "./settings.ts";

/** The settings that may change without a new posterior sample. Millimetres. */
export type WhatIfSettings = Pick<Settings, "limit" | "runningClearance" | "takeUpLeft">;

/**
 * What is retained of an assessment to decide again with another limit, running clearance or take-up left: plain
 * data, a few numbers for each draw, that can be posted from one thread to another.
 */
export interface RetainedDraws extends PosteriorSummary {
  readonly settings: Settings;
  /** What the checks found, before decisive outliers become stops. */
  readonly findings: readonly Finding[];
  readonly stations: readonly Station[];
  /** Outliers among stations that were read once. */
  readonly toConfirm: readonly LostMotion[];
  /** Extremes of subsets of the readings, by `readingsKey`: all subsets that a decision may need. */
  readonly subsets: ReadonlyMap<string, readonly Extremes[]>;
}

/** A key that is the same for the same readings. */
export function readingsKey(readings: readonly LostMotion[]): string {
  return readings.map(({ from }) => from.join("+")).join();
}

/**
 * What an assessment would decide with other settings. It equals a full assessment with these settings, because the
 * draws of the profile do not depend on them; only a note on what scatter could hide keeps its old wording.
 * Throws if a subset is needed that was not retained.
 */
export function whatIf(retained: RetainedDraws, change: WhatIfSettings, lengths: Lengths): DecisionResult {
  const settings = { ...retained.settings, ...change };
  const ofReadings = retained.findings.filter(({ check }) => check !== "limit not attainable");
  const findings = [...limitNotAttainable({ settings, lengths }), ...ofReadings];
  const checks = stopDecisiveOutliers(
    { ...retained, findings },
    chancesOf(retained.extremes, settings),
    (readings) => {
      const extremes = retained.subsets.get(readingsKey(readings));
      if (extremes === undefined) throw new Error("These readings were not sampled by themselves.");
      return chancesOf(extremes, settings);
    },
    lengths,
  );
  return decideFromPosterior(retained, settings, checks);
}
