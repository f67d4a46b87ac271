import { engagedLengthOf } from "../../inspection/engagedLength.ts";
import type { Lengths } from "../../inspection/lengths.ts";
import type { MetricSlide } from "../../inspection/metric.ts";

/** From one position to another, in millimetres. */
export interface Interval {
  readonly from: number;
  readonly to: number;
}

/** All the analysis needs to know of the slide, in millimetres, defaults filled in. */
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
  /** How much the nut can still take up; Infinity if unknown. */
  readonly takeUpLeft: number;
  readonly takeUpUsed: number;
  readonly clearanceNew: number;
  readonly wearLimit: number;
  readonly holdsLoad: boolean;
  /** Whether a spring-loaded nut may hide its wear: the reading force did not, or may not, exceed its spring. */
  readonly springHides: boolean;
}

/** Defaults in millimetres; each one used is listed as assumed. */
const DEFAULT_RUNNING_CLEARANCE = 0.025;
const DEFAULT_END_FLOAT_ATTAINABLE = 0.01;

/** The settings of a slide with defaults filled in, and a sentence for each default used. */
export function settingsOf(
  slide: MetricSlide,
  lengths: Lengths,
): { readonly settings: Settings; readonly assumed: string[] } {
  const assumed: string[] = [];
  const withDefault = <Value>(stated: Value | undefined, fallback: Value, line: string): Value => {
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
    workingRange: withDefault(slide.workingRange, travel, "The working range is the whole travel."),
    lead: screw.lead,
    pitch,
    limit: slide.backlashLimit,
    runningClearance: withDefault(
      slide.runningClearance,
      DEFAULT_RUNNING_CLEARANCE,
      `A nut is left ${lengths.position(DEFAULT_RUNNING_CLEARANCE)} of running clearance at the tight spot.`,
    ),
    endFloatAttainable: withDefault(
      slide.endFloatAttainable,
      DEFAULT_END_FLOAT_ATTAINABLE,
      `A thrust bearing in order can be set to ${lengths.position(DEFAULT_END_FLOAT_ATTAINABLE)} of end float.`,
    ),
    engagedLength: withDefault(
      nut?.engagedLength,
      engaged.length,
      `The nut engages ${lengths.position(engaged.length)} of the screw (${engaged.assumedAs}).`,
    ),
    adjustable: withDefault(nut?.adjustable, true, "The nut is adjustable."),
    takeUpLeft: nut?.takeUpLeft ?? Number.POSITIVE_INFINITY,
    takeUpUsed: withDefault(nut?.takeUpUsed, 0, "None of the nut's take-up has been used so far."),
    clearanceNew: withDefault(nut?.clearanceNew, 0, "The nut had no clearance when it was new."),
    wearLimit: withDefault(
      nut?.wearLimit,
      pitch / 8,
      `A nut may wear by ${lengths.position(pitch / 8)}, a quarter of the thread's thickness at the pitch line.`,
    ),
    holdsLoad: withDefault(slide.holdsLoad, false, "The slide does not hold up a load."),
    springHides: nut?.kind === "spring-loaded" && slide.springOvercome !== true,
  };
  if (nut?.takeUpLeft === undefined && settings.adjustable) {
    assumed.push("How much the nut can still take up is not known.");
  }
  return { settings, assumed };
}
