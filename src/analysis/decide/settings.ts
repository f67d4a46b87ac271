import { engagedLengthOf } from "../../inspection/engagedLength.ts";
import type { Lengths } from "../../inspection/lengths.ts";
import type { MetricSlide } from "../../inspection/metric.ts";

export interface Interval {
  readonly from: number;
  readonly to: number;
}

/** Everything that the analysis needs to know of the slide, in millimetres, with nothing left open. */
export interface Settings {
  readonly travel: Interval;
  readonly workingRange: Interval;
  readonly lead: number;
  readonly pitch: number;
  readonly limit: number;
  readonly runningClearance: number;
  readonly endFloatAttainable: number;
  readonly engagedLength: number;
  readonly adjustable: boolean;
  /** How much the nut can still take up; Infinity when it is not known. */
  readonly takeUpLeft: number;
  readonly takeUpUsed: number;
  readonly clearanceNew: number;
  readonly wearLimit: number;
  readonly holdsLoad: boolean;
  /** A spring-loaded nut whose spring the reading force did not exceed, or may not have. */
  readonly springHides: boolean;
}

/** Section numbers are those of the method that the program documents: defaults, each told as assumed. */
const DEFAULT_RUNNING_CLEARANCE = 0.025;
const DEFAULT_END_FLOAT_ATTAINABLE = 0.01;

/** The slide's data with defaults filled in, and a line for each default that was used. */
export function settingsOf(
  slide: MetricSlide,
  lengths: Lengths,
): { readonly settings: Settings; readonly assumed: string[] } {
  const assumed: string[] = [];
  const or = <Value>(stated: Value | undefined, fallback: Value, line: string): Value => {
    if (stated !== undefined) return stated;
    assumed.push(line);
    return fallback;
  };
  const { screw, nut, travel } = slide;
  const starts = screw.starts ?? 1;
  if (screw.starts === undefined) assumed.push("The screw has a single start.");
  const pitch = screw.lead / starts;
  const engaged = engagedLengthOf(slide);
  const settings: Settings = {
    travel: { from: travel.from, to: travel.to },
    workingRange: or(slide.workingRange, travel, "The working range is the whole travel."),
    lead: screw.lead,
    pitch,
    limit: slide.backlashLimit,
    runningClearance: or(
      slide.runningClearance,
      DEFAULT_RUNNING_CLEARANCE,
      `A nut is left ${lengths.position(DEFAULT_RUNNING_CLEARANCE)} of running clearance at the tight spot.`,
    ),
    endFloatAttainable: or(
      slide.endFloatAttainable,
      DEFAULT_END_FLOAT_ATTAINABLE,
      `A thrust bearing in order can be set to ${lengths.position(DEFAULT_END_FLOAT_ATTAINABLE)} of end float.`,
    ),
    engagedLength: or(
      nut?.engagedLength,
      engaged.length,
      `The nut engages ${lengths.position(engaged.length)} of the screw (${engaged.assumedAs}).`,
    ),
    adjustable: or(nut?.adjustable, true, "The nut is adjustable."),
    takeUpLeft: nut?.takeUpLeft ?? Number.POSITIVE_INFINITY,
    takeUpUsed: or(nut?.takeUpUsed, 0, "None of the nut's take-up has been used so far."),
    clearanceNew: or(nut?.clearanceNew, 0, "The nut had no clearance when it was new."),
    wearLimit: or(
      nut?.wearLimit,
      pitch / 8,
      `A nut may wear by ${lengths.position(pitch / 8)}, a quarter of the thread's thickness at the pitch line.`,
    ),
    holdsLoad: or(slide.holdsLoad, false, "The slide does not hold up a load."),
    springHides: nut?.kind === "spring-loaded" && slide.springOvercome !== true,
  };
  if (nut?.takeUpLeft === undefined && settings.adjustable) {
    assumed.push("How much the nut can still take up is not known.");
  }
  return { settings, assumed };
}
