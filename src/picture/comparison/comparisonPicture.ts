import type { ComparedSurvey, Comparison } from "../../analysis/comparison/comparison.ts";
import { type Lengths, lengthsIn } from "../../inspection/lengths.ts";
import { fromMillimetres, type Units } from "../../inspection/units.ts";
import { type Axis, exactAxis, wideAxis } from "../axis.ts";
import type { Point } from "../linesAbove.ts";
import type { BandedLine } from "../plotParts.ts";
import type { LabelledInterval } from "../profilePicture.ts";

/** A survey's profile with its readings. */
export interface SurveyLine extends BandedLine {
  readonly readings: readonly Point[];
}

/**
 * The picture of two surveys, in the reader's unit: both profiles over the travel, and the change below them. Plain data
 * for any renderer.
 */
export interface ComparisonPicture {
  readonly title: string;
  /** The picture in words, for a screen reader. */
  readonly description: string;
  readonly units: Units;
  readonly xAxis: Axis;
  readonly yAxis: Axis;
  readonly changeAxis: Axis;
  readonly before: SurveyLine;
  readonly after: SurveyLine;
  /** Later minus earlier lost motion. */
  readonly change: BandedLine;
  readonly limit: { readonly y: number; readonly label: string };
  /** Null if it is the whole travel. */
  readonly workingRange: LabelledInterval | null;
}

const POSITION_TICKS = 10;
const LOST_MOTION_TICKS = 5;
const CHANGE_TICKS = 4;
const LONGEST_NAME = 16;
/** If the two names together are longer, the title has no room for them. */
const LONGEST_NAMES = 24;
/** Room above the highest thing shown, for its label. */
const HEADROOM = 1.12;

/** Describes a comparison as a picture in the given unit. */
export function comparisonPicture(comparison: Comparison, units: Units): ComparisonPicture {
  const lengths = lengthsIn(units, comparison.resolution);
  const length = (millimetres: number): number => fromMillimetres(millimetres, units);
  const { from, to, difference } = comparison;
  const { travel, workingRange, limit } = to.assessment.settings;
  const before = profileOf(from, length);
  const after = profileOf(to, length);
  const change: BandedLine = {
    label: changeLabel(comparison, lengths),
    points: difference.map((point) => ({ x: length(point.position), y: length(point.change) })),
    band: difference.map(({ position, low, high }) => ({
      x: length(position),
      low: length(low),
      high: length(high),
    })),
  };
  const lows = (line: BandedLine): readonly number[] => line.band.map(({ low }) => low);
  const highs = (line: BandedLine): readonly number[] => line.band.map(({ high }) => high);
  const amounts = [before, after].flatMap((line) => [
    ...lows(line),
    ...highs(line),
    ...line.readings.map(({ y }) => y),
  ]);
  const isNarrower = workingRange.from > travel.from || workingRange.to < travel.to;
  return {
    title: titleOf(comparison, lengths),
    description: describe(comparison, lengths),
    units,
    xAxis: exactAxis(
      `Position along the travel (${units})`,
      length(travel.from),
      length(travel.to),
      POSITION_TICKS,
    ),
    yAxis: wideAxis(
      `Lost motion (${units})`,
      Math.min(...amounts),
      Math.max(length(limit), ...amounts) * HEADROOM,
      LOST_MOTION_TICKS,
    ),
    changeAxis: wideAxis(
      `Change of lost motion (${units})`,
      Math.min(...lows(change)),
      Math.max(...highs(change)) * HEADROOM,
      CHANGE_TICKS,
    ),
    before,
    after,
    change,
    limit: { y: length(limit), label: `limit ${lengths.position(limit)}` },
    workingRange: isNarrower
      ? { from: length(workingRange.from), to: length(workingRange.to), label: "working range" }
      : null,
  };
}

function profileOf({ id, assessment }: ComparedSurvey, length: (millimetres: number) => number): SurveyLine {
  return {
    label: shortened(id),
    points: assessment.profile.map(({ position, backlash }) => ({
      x: length(position),
      y: length(backlash),
    })),
    band: assessment.profile.map(({ position, low, high }) => ({
      x: length(position),
      low: length(low),
      high: length(high),
    })),
    readings: assessment.stations.flatMap(({ readings }) =>
      readings.map(({ position, value }) => ({ x: length(position), y: length(value) })),
    ),
  };
}

/** A survey's name, shortened for a drawing. */
function shortened(id: string): string {
  const letters = Array.from(id);
  return letters.length > LONGEST_NAME ? `${letters.slice(0, LONGEST_NAME - 1).join("")}…` : id;
}

function titleOf({ from, to, change }: Comparison, lengths: Lengths): string {
  const { value } = change.uniform;
  const amount = lengths.lostMotion(Math.abs(value));
  const names =
    from.id.length + to.id.length > LONGEST_NAMES ? "before and after" : `${from.id} and ${to.id}`;
  return `Lost motion, ${names}: uniform part ${value < 0 ? "less" : "more"} by ${amount}`;
}

function changeLabel({ change, sameEverywhere }: Comparison, lengths: Lengths): string {
  if (!sameEverywhere) return "what has changed, with 95 % band";
  const { value } = change.uniform;
  return `${lengths.lostMotion(Math.abs(value))} ${value < 0 ? "less" : "more"} all along`;
}

function describe({ from, to, difference, acceptance }: Comparison, lengths: Lengths): string {
  const changes = difference.map(({ change }) => change);
  const extremes = ({ assessment: { tightSpot, loosestSpot } }: ComparedSurvey): string =>
    `from ${lengths.lostMotion(tightSpot.backlash)} at its least to ${lengths.lostMotion(loosestSpot.backlash)} at its greatest`;
  const sentences = [
    `Lost motion along the travel in two surveys, and the difference of the two under it`,
    `${from.id}: ${extremes(from)}`,
    `${to.id}: ${extremes(to)}`,
    `The change along the travel lies between ${lengths.lostMotion(Math.min(...changes))} and ${lengths.lostMotion(Math.max(...changes))}`,
    `The limit is ${lengths.position(acceptance.limit)}`,
  ];
  return `${sentences.join(". ")}.`;
}
