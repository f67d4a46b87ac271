import type { Assessment, ProfilePoint, Spot } from "../analysis/assessment.ts";
import type { Interval } from "../analysis/decide/settings.ts";
import { type Lengths, lengthsIn } from "../inspection/lengths.ts";
import { fromMillimetres, type Units } from "../inspection/units.ts";
import { type Axis, exactAxis, wideAxis } from "./axis.ts";
import { evennessOf } from "./evenness.ts";
import { linesAbove, type Point } from "./linesAbove.ts";
import { describeProfile } from "./profileDescription.ts";

export type { Point } from "./linesAbove.ts";

export interface BandPoint {
  readonly x: number;
  readonly low: number;
  readonly high: number;
}

/** A spot with its label. */
export interface SpotMark extends Point {
  readonly name: "tight spot" | "loosest spot";
  readonly label: string;
}

export interface LabelledLine {
  readonly label: string;
  readonly points: readonly Point[];
}

export interface LabelledInterval extends Interval {
  readonly label: string;
}

/**
 * What the picture of a profile shows, in the reader's unit: x is the slide's position, y the lost motion.
 * A plain object, so that the page, the command and the report draw the same.
 */
export interface ProfilePicture {
  readonly title: string;
  /** The picture in words, for screen readers. */
  readonly description: string;
  readonly units: Units;
  readonly xAxis: Axis;
  readonly yAxis: Axis;
  readonly readings: readonly Point[];
  /** Struck readings. They may be outside the axes. */
  readonly struck: readonly Point[];
  readonly median: LabelledLine;
  /** The pointwise 95 % band about the median. */
  readonly band: readonly BandPoint[];
  /** What taking up the nut (or new nuts on this screw) would leave; null if that changes nothing. */
  readonly afterAdjusting: (LabelledLine & { readonly short: string }) | null;
  readonly limit: { readonly y: number; readonly label: string };
  /** The loosest and the tight spot; none if the readings do not show that lost motion differs. */
  readonly spots: readonly SpotMark[];
  /** Null if it is the whole travel. */
  readonly workingRange: LabelledInterval | null;
  readonly wornZones: readonly (LabelledInterval & { readonly atLeast: number })[];
  /** The parts of the median above the limit within the working range, to be hatched down to the limit. */
  readonly exceeding: readonly (readonly Point[])[];
}

const POSITION_TICKS = 10;
const LOST_MOTION_TICKS = 6;
/** The y axis reaches this many times the greatest value, so that its label has room. */
const HEADROOM = 1.12;

/** Describes the profile of an assessment as a picture in the given unit. */
export function profilePicture(assessment: Assessment, units: Units): ProfilePicture {
  const lengths = lengthsIn(units, assessment.resolution);
  const { settings, profile } = assessment;
  const level = levelOf(assessment, lengths);
  const length = (millimetres: number): number => fromMillimetres(millimetres, units);
  const point = (spot: Spot): Point => ({
    x: length(spot.position),
    y: length(spot.backlash),
  });
  const stretch = ({ from, to }: Interval): Interval => ({ from: length(from), to: length(to) });

  const readings = assessment.stations.flatMap((station) =>
    station.readings.map((reading) => point({ position: reading.position, backlash: reading.value })),
  );
  const median = profile.map(point);
  const limit = length(settings.limit);
  const working = stretch(settings.workingRange);
  const withinWorkingRange = median.filter(({ x }) => x >= working.from && x <= working.to);

  return {
    title: titleOf(assessment, level, lengths),
    description: describeProfile(assessment, lengths),
    units,
    ...axesOf(readings, profile, assessment, units),
    readings,
    struck: assessment.struck.map(({ position, value }) => point({ position, backlash: value })),
    median: { label: level ?? "profile with 95 % band", points: median },
    band: profile.map(({ position, low, high }) => ({
      x: length(position),
      low: length(low),
      high: length(high),
    })),
    afterAdjusting: adjustingChanges(assessment, lengths)
      ? { ...afterLabels(settings.adjustable), points: assessment.profileAfterAdjusting.map(point) }
      : null,
    limit: { y: limit, label: `limit ${lengths.position(settings.limit)}` },
    spots: spotsOf(assessment, lengths),
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

function spotsOf(assessment: Assessment, lengths: Lengths): readonly SpotMark[] {
  if (evennessOf(assessment, lengths) !== "uneven") return [];
  const mark = (name: SpotMark["name"], { position, backlash }: Spot): SpotMark => ({
    x: fromMillimetres(position, lengths.units),
    y: fromMillimetres(backlash, lengths.units),
    name,
    label: `${name} ${lengths.lostMotion(backlash)} at ${lengths.spot(position)}`,
  });
  return [mark("loosest spot", assessment.loosestSpot), mark("tight spot", assessment.tightSpot)];
}

/** The level in words where the readings do not show that lost motion differs along the travel; else null. */
function levelOf(assessment: Assessment, lengths: Lengths): string | null {
  const least = lengths.figure(assessment.tightSpot.backlash);
  const greatest = lengths.lostMotion(assessment.loosestSpot.backlash);
  switch (evennessOf(assessment, lengths)) {
    case "uneven":
      return null;
    case "even":
      return `${greatest}, the same all along`;
    case "open":
      return `${least} to ${greatest} along the travel`;
  }
}

function titleOf({ tightSpot, loosestSpot }: Assessment, level: string | null, lengths: Lengths): string {
  const spots = `${lengths.lostMotion(tightSpot.backlash)} at the tight spot, ${lengths.lostMotion(loosestSpot.backlash)} at the loosest`;
  return `Lost motion: ${level ?? spots}`;
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

function afterLabels(adjustable: boolean): { readonly label: string; readonly short: string } {
  return adjustable
    ? { label: "what adjusting the nut would leave", short: "left after adjusting" }
    : { label: "what new nuts on this screw would leave", short: "left with new nuts" };
}

function isNarrower(inner: Interval, outer: Interval): boolean {
  return inner.from > outer.from || inner.to < outer.to;
}
