import type { Assessment, ProfilePoint, Spot } from "../analysis/assessment.ts";
import type { Stretch } from "../analysis/settings.ts";
import { type Lengths, lengthsIn } from "../inspection/lengths.ts";
import { fromMillimetres, type Units } from "../inspection/units.ts";
import { type Axis, exactAxis, wideAxis } from "./axis.ts";
import { linesAbove, type Point } from "./linesAbove.ts";
import { describeProfile } from "./profileDescription.ts";

export type { Point } from "./linesAbove.ts";

export interface BandPoint {
  readonly x: number;
  readonly low: number;
  readonly high: number;
}

/** A point with the words that stand beside it. */
export interface Mark extends Point {
  readonly label: string;
}

export interface LabelledLine {
  readonly label: string;
  readonly points: readonly Point[];
}

export interface LabelledStretch extends Stretch {
  readonly label: string;
}

/**
 * What the picture of a profile shows, in the reader's unit: x is the slide's position, y the lost motion.
 * A plain object, so that whatever draws it (the page, the command, the report) draws the same.
 */
export interface ProfilePicture {
  readonly title: string;
  /** The picture in words, for those who cannot see it. */
  readonly description: string;
  readonly units: Units;
  readonly xAxis: Axis;
  readonly yAxis: Axis;
  readonly readings: readonly Point[];
  readonly median: LabelledLine;
  /** The pointwise 95 % band about the median. */
  readonly band: readonly BandPoint[];
  /** What taking up the nut (or new nuts on this screw) would leave; null where that changes nothing. */
  readonly afterAdjusting: LabelledLine | null;
  readonly limit: { readonly y: number; readonly label: string };
  readonly tightSpot: Mark;
  readonly loosestSpot: Mark;
  /** Null where it is the whole travel. */
  readonly workingRange: LabelledStretch | null;
  readonly wornZones: readonly (LabelledStretch & { readonly atLeast: number })[];
  /** The median where it exceeds the limit within the working range, to be hatched down to the limit. */
  readonly exceeding: readonly (readonly Point[])[];
}

const POSITION_TICKS = 10;
const LOST_MOTION_TICKS = 6;
/** Room above the highest thing shown, for its label. */
const HEADROOM = 1.12;

/** Describes the profile of an assessment as a picture in the given unit. */
export function profilePicture(assessment: Assessment, units: Units): ProfilePicture {
  const lengths = lengthsIn(units, assessment.resolution);
  const { settings, tightSpot, loosestSpot, profile } = assessment;
  const length = (millimetres: number): number => fromMillimetres(millimetres, units);
  const point = (spot: Spot): Point => ({
    x: length(spot.position),
    y: length(spot.backlash),
  });
  const stretch = ({ from, to }: Stretch): Stretch => ({ from: length(from), to: length(to) });

  const readings = assessment.stations.flatMap((station) =>
    station.readings.map((reading) => point({ position: reading.position, backlash: reading.value })),
  );
  const median = profile.map(point);
  const limit = length(settings.limit);
  const working = stretch(settings.workingRange);
  const withinWorkingRange = median.filter(({ x }) => x >= working.from && x <= working.to);

  return {
    title: titleOf(assessment, lengths),
    description: describeProfile(assessment, lengths),
    units,
    ...axesOf(readings, profile, assessment, units),
    readings,
    median: { label: "profile with 95 % band", points: median },
    band: profile.map(({ position, low, high }) => ({
      x: length(position),
      low: length(low),
      high: length(high),
    })),
    afterAdjusting: adjustingChanges(assessment, lengths)
      ? { label: afterLabel(settings.adjustable), points: assessment.profileAfterAdjusting.map(point) }
      : null,
    limit: { y: limit, label: `limit ${lengths.position(settings.limit)}` },
    tightSpot: { ...point(tightSpot), label: `tight spot ${placed(tightSpot, lengths)}` },
    loosestSpot: { ...point(loosestSpot), label: `loosest spot ${placed(loosestSpot, lengths)}` },
    workingRange: isNarrower(settings.workingRange, settings.travel)
      ? { ...working, label: "working range" }
      : null,
    wornZones: assessment.wornZones.map((zone) => ({
      ...stretch(zone),
      atLeast: length(zone.atLeast),
      label: `screw worn by at least ${lengths.lostMotion(zone.atLeast)}`,
    })),
    exceeding: linesAbove(withinWorkingRange, limit),
  };
}

function placed({ position, backlash }: Spot, lengths: Lengths): string {
  return `${lengths.lostMotion(backlash)} at ${lengths.spot(position)}`;
}

function titleOf({ tightSpot, loosestSpot }: Assessment, lengths: Lengths): string {
  const least = lengths.lostMotion(tightSpot.backlash);
  const greatest = lengths.lostMotion(loosestSpot.backlash);
  return least === greatest
    ? `Lost motion: ${least} all along the travel`
    : `Lost motion: ${least} at the tight spot, ${greatest} at the loosest`;
}

function axesOf(
  readings: readonly Point[],
  profile: readonly ProfilePoint[],
  { settings }: Assessment,
  units: Units,
): { readonly xAxis: Axis; readonly yAxis: Axis } {
  const length = (millimetres: number): number => fromMillimetres(millimetres, units);
  const positions = [length(settings.travel.from), length(settings.travel.to), ...readings.map(({ x }) => x)];
  const amounts = [
    length(settings.limit),
    ...profile.map(({ high }) => length(high)),
    ...readings.map(({ y }) => y),
  ];
  return {
    xAxis: exactAxis(
      `Position along the travel (${units})`,
      Math.min(...positions),
      Math.max(...positions),
      POSITION_TICKS,
    ),
    yAxis: wideAxis(
      `Lost motion (${units})`,
      Math.min(...amounts),
      Math.max(...amounts) * HEADROOM,
      LOST_MOTION_TICKS,
    ),
  };
}

function adjustingChanges({ profile, profileAfterAdjusting }: Assessment, lengths: Lengths): boolean {
  return profileAfterAdjusting.some((after, index) => {
    const before = profile[index];
    return before !== undefined && lengths.figure(before.backlash) !== lengths.figure(after.backlash);
  });
}

function afterLabel(adjustable: boolean): string {
  return adjustable ? "what adjusting the nut would leave" : "what new nuts on this screw would leave";
}

function isNarrower(inner: Stretch, outer: Stretch): boolean {
  return inner.from > outer.from || inner.to < outer.to;
}
