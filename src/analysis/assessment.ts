import type { LostMotion } from "./correct/corrections.ts";
import type { Station } from "./correct/stations.ts";
import type { Settings } from "./decide/settings.ts";
import type { Positioning } from "./positioning.ts";

/** A quantity with its uncertainty: median and equal-tailed 95 % interval of the draws. */
export interface Estimate {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** What a survey may lead to, from least to most work. */
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

/** A stretch of the screw, in slide positions, that has worn by at least so much, both flanks together. */
export interface WornZone {
  readonly from: number;
  readonly to: number;
  readonly atLeast: number;
  /** The same bound where it is greatest within the stretch, from draw to draw. */
  readonly deepest: Estimate;
  /**
   * Share of the thread's thickness, half the pitch at the pitch line, that is left at most where the wear is
   * deepest; null where the thread's form is not stated.
   */
  readonly thicknessLeft: Estimate | null;
}

export type NextReading =
  | { readonly position: number; readonly why: string }
  | { readonly endFloat: true; readonly why: string };

export type Severity = "note" | "warning" | "stop";

/** Something about the readings that the reader should know, with the readings concerned, 0-based in file order. */
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
  /** False for what only an indicator's maker or certificate can tell, and nobody said. */
  readonly stated: boolean;
}

/** Why a slide gets no verdict, or why more must be measured first. */
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
  /** Why it is measure-more or no-verdict; empty otherwise. The first is the chief one. */
  readonly reasons: readonly Reason[];
  /** Share of the draws in each class; null where no verdict may be given. */
  readonly chances: Chances | null;
  /** The class with the greatest chance, for the words "most likely"; null where no verdict may be given. */
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
   * Where the profile is highest over the working range, and the greatest lost motion, which is told of it. That is
   * somewhat more than the profile's middle there: it is of each draw's greatest wherever that lies, with the crest of a
   * wobble once per turn, which no one position has for sure.
   */
  readonly loosestSpot: Spot;
  /** Lost motion that is left where it is greatest when the nut is taken up as far as it goes. */
  readonly afterAdjusting: { readonly worst: Estimate; readonly position: number };
  /** The same when new nuts are fitted to this screw instead. */
  readonly afterNewNuts: { readonly worst: Estimate; readonly position: number };
  readonly wornZones: readonly WornZone[];
  /** The graduation that readings were rounded to. */
  readonly resolution: number;
  /** Drive play that is part of every reading; 0 where readings do not carry it or none was stated. */
  readonly drivePlay: number;
  /** One standard deviation of a single reading. */
  readonly repeatability: number;
  readonly uncertainty: { readonly lines: readonly UncertaintyLine[]; readonly expanded: number };
  readonly profile: readonly ProfilePoint[];
  /** What adjusting would leave along the travel: the profile's positions with the median that is left. */
  readonly profileAfterAdjusting: readonly Spot[];
  readonly nextReadings: readonly NextReading[];
  readonly canBeSettled: boolean;
  readonly checks: readonly Finding[];
  readonly stations: readonly Station[];
  /** What struck readings come to. They count for nothing. */
  readonly struck: readonly LostMotion[];
  /** What ISO 230-2 makes of a survey's positioning readings; undefined where it has none from both sides. */
  readonly positioning?: Positioning | undefined;
}
