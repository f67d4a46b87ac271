import type { LostMotion } from "./correct/corrections.ts";
import type { Station } from "./correct/stations.ts";
import type { Settings } from "./decide/settings.ts";
import type { Positioning } from "./positioning/positioning.ts";

/** A quantity with its uncertainty: median and equal-tailed 95 % interval of the draws. */
export interface Estimate {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** The actions that a verdict may recommend, from least to most work. */
export const ACTIONS = [
  "leave-alone",
  "correct-end-float",
  "adjust-nut",
  "replace-nuts",
  "remake-screw",
] as const;
export type Action = (typeof ACTIONS)[number];
export type Verdict = Action | "measure-more" | "no-verdict";
export type Chances = Readonly<Record<Action, number>>;

/** Conformance with the limit in the words of ISO 14253-1. */
export type Conformance = "proven" | "disproven" | "not proven";

export interface Spot {
  readonly position: number;
  readonly backlash: number;
}

export interface ProfilePoint extends Spot {
  readonly low: number;
  readonly high: number;
}

/** An interval of the screw, in slide positions, that has worn by at least `atLeast`, both flanks together. */
export interface WornZone {
  readonly from: number;
  readonly to: number;
  readonly atLeast: number;
  /** Estimate of the bound where it is greatest within the zone. */
  readonly deepest: Estimate;
  /**
   * Upper bound on the share of the thread's thickness (half the pitch at the pitch line) left where the wear is
   * deepest; null if the thread form is not stated.
   */
  readonly thicknessLeft: Estimate | null;
}

export type NextReading =
  | { readonly position: number; readonly why: string }
  | { readonly endFloat: true; readonly why: string };

export type Severity = "note" | "warning" | "stop";

/** The result of a check, with the readings concerned (0-based, file order). */
export interface Finding {
  readonly check: string;
  readonly severity: Severity;
  readonly message: string;
  readonly readings: readonly number[];
}

export interface UncertaintyLine {
  readonly source: string;
  /** Standard uncertainty. */
  readonly standard: number;
  /** False if only the indicator's maker or certificate can state it, and nobody did. */
  readonly stated: boolean;
}

/** Why there is no verdict, or why more must be measured first. */
export type Reason =
  | "holds-load"
  | "spring-loaded"
  | "limit-not-attainable"
  | "coverage"
  | "unread-end"
  | "checks"
  | "end-float-unmeasured"
  | "chances"
  | "at-the-limit";

/** The assessment of one survey of one slide. Every length is in millimetres. */
export interface Assessment {
  readonly survey: string;
  readonly settings: Settings;
  readonly verdict: Verdict;
  /** Why the verdict is measure-more or no-verdict, the main reason first; empty otherwise. */
  readonly reasons: readonly Reason[];
  /** Share of the draws in each class; null for no-verdict. */
  readonly chances: Chances | null;
  /** The class with the greatest chance; null for no-verdict. */
  readonly likeliest: Action | null;
  readonly conformance: Conformance;
  readonly assumed: readonly string[];
  /** Lost motion at the tight spot, end float included. */
  readonly uniform: Estimate;
  readonly takeUp: Estimate;
  readonly uneven: Estimate;
  /** Greatest lost motion over the working range, end float included. */
  readonly greatest: Estimate;
  readonly unevenChance: number;
  readonly endFloat: Estimate | null;
  readonly tightSpot: Spot;
  /**
   * Where the median profile is highest over the working range, with the greatest lost motion. That exceeds the median
   * profile there: it is the median of each draw's greatest, wherever that lies, crest of a wobble included.
   */
  readonly loosestSpot: Spot;
  /** Greatest lost motion after taking up the nut as far as possible. */
  readonly afterAdjusting: { readonly worst: Estimate; readonly position: number };
  /** The same with new nuts fitted to this screw instead. */
  readonly afterNewNuts: { readonly worst: Estimate; readonly position: number };
  readonly wornZones: readonly WornZone[];
  /** The graduation that readings were rounded to. */
  readonly resolution: number;
  /** Drive play in every reading; 0 if readings do not carry it or none was stated. */
  readonly drivePlay: number;
  /** One standard deviation of a single reading. */
  readonly repeatability: number;
  readonly uncertainty: { readonly lines: readonly UncertaintyLine[]; readonly expanded: number };
  readonly profile: readonly ProfilePoint[];
  /** Median profile that adjusting would leave. */
  readonly profileAfterAdjusting: readonly Spot[];
  readonly nextReadings: readonly NextReading[];
  readonly canBeSettled: boolean;
  readonly checks: readonly Finding[];
  readonly stations: readonly Station[];
  /** Struck readings, corrected. They do not count. */
  readonly struck: readonly LostMotion[];
  /** The quantities of ISO 230-2; undefined if the survey has no positioning readings from both sides. */
  readonly positioning?: Positioning | undefined;
}
