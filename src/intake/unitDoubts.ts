import { isPair, isPositioning } from "../inspection/readingShapes.ts";
import type { Reading } from "../inspection/schema.ts";
import { toMillimetres, type Units } from "../inspection/units.ts";
import type { ColumnTaken } from "./columnsTaken.ts";
import { lengthUnit, millimetresIn } from "./lengthUnit.ts";

/** Figures that make no sense in the unit that they were taken to be in. */
export interface UnitDoubt {
  readonly of: "lost motion" | "position";
  /** The numbers of the columns that they are in, counted from 1. */
  readonly columns: readonly number[];
  /** What is odd, in words: `the lost motion is about 12 mm, on a travel of 200 mm`. */
  readonly what: string;
  /** The unit that they were taken to be in. */
  readonly unit: string;
  /** Units in which they would make sense, the likeliest first; `divisions` may be among them. */
  readonly likely: readonly string[];
}

/** A log as far as it bears on the units of its columns. */
interface Read {
  readonly readings: readonly Reading[];
  readonly units: Units | undefined;
  readonly columns: readonly ColumnTaken[];
}

interface Travel {
  readonly from: number;
  readonly to: number;
}

/** No slide that is still used has more lost motion than this, and no indicator shows less, in millimetres. */
const MOST_LOST_MOTION = 3;
const LEAST_LOST_MOTION = 0.0005;
/** What a lost motion is most often of, in millimetres. */
const USUAL_LOST_MOTION = 0.15;
/** So many readings tell what all are like. */
const SAMPLE = 5000;
const LOST_MOTION_UNITS = ["mm", "in", "thou", "mm/100", "µm"];
const POSITION_UNITS = ["mm", "in", "cm", "m"];
/** Places close together on a long travel may be all that was read yet; only these two are often taken for another. */
const CRAMPED_UNITS = ["mm", "in"];
const LEAST_PLACES = 3;
/** How far outside the travel a position may be, as a share of it, for it to be in its unit. */
const SLACK = 0.02;

/**
 * Where the figures of a log make no sense in the units that they were taken to be in: a lost motion of 12 mm; a last
 * position of 7 on a travel of 180. A unit that the reader gave for a column is not doubted.
 *
 * @param travel the slide's, in the unit of the log, where it is known
 */
export function unitDoubts(read: Read, travel: Travel | undefined): readonly UnitDoubt[] {
  const { units, readings } = read;
  if (units === undefined) return [];
  const step = Math.max(1, Math.floor(readings.length / SAMPLE));
  const sample = readings.filter(({ excluded }, index) => excluded === undefined && index % step === 0);
  if (sample.length === 0) return [];
  const doubts = [lostMotionDoubt(sample, read, units, travel), positionDoubt(sample, read, units, travel)];
  return doubts.filter((doubt) => doubt !== undefined);
}

/** A doubt about columns of the given kinds, unless the reader said what they are in. */
function doubtAbout(
  read: Read,
  kinds: readonly ColumnTaken["as"][],
  about: Pick<UnitDoubt, "of" | "what">,
  likely: (unit: string) => readonly string[],
): UnitDoubt | undefined {
  const inUnits = read.columns
    .map(({ as, unit = read.units, isUnitSaid }, index) => ({ number: index + 1, as, unit, isUnitSaid }))
    .filter(({ as, unit }) => kinds.includes(as) && unit !== "divisions");
  const [first] = inUnits;
  if (first?.unit === undefined || inUnits.some(({ isUnitSaid }) => isUnitSaid)) return undefined;
  const candidates = likely(first.unit).filter((unit) => unit !== first.unit);
  return { ...about, columns: inUnits.map(({ number }) => number), unit: first.unit, likely: candidates };
}

function lostMotionDoubt(
  sample: readonly Reading[],
  read: Read,
  units: Units,
  travel: Travel | undefined,
): UnitDoubt | undefined {
  const isInDivisions = read.columns.some(({ unit }) => unit === "divisions");
  const sizes = sample.flatMap((item) => (isPair(item) && isInDivisions ? [] : lostMotionOf(item)));
  const size = median(sizes);
  if (size === undefined || size === 0) return undefined;
  const inMillimetres = toMillimetres(size, units);
  if (inMillimetres <= MOST_LOST_MOTION && inMillimetres >= LEAST_LOST_MOTION) return undefined;
  const onTravel = travel === undefined ? "" : `, on a travel of ${figure(travel.to - travel.from)} ${units}`;
  const what = `the lost motion is about ${figure(size)} ${units}${onTravel}`;
  return doubtAbout(read, ["backlash", "advancing", "retracting"], { of: "lost motion", what }, (unit) => {
    const count = inMillimetres / scaleOf(unit);
    const distance = (candidate: string): number =>
      Math.abs(Math.log((count * scaleOf(candidate)) / USUAL_LOST_MOTION));
    const sensible = LOST_MOTION_UNITS.filter((candidate) => {
      const size = count * scaleOf(candidate);
      return size <= MOST_LOST_MOTION && size >= LEAST_LOST_MOTION;
    });
    // Bare figures as large as these are more often read on a handwheel's dial than on an indicator.
    const isDial = sample.some(isPair) && inMillimetres > MOST_LOST_MOTION;
    return [...(isDial ? ["divisions"] : []), ...sensible.toSorted((a, b) => distance(a) - distance(b))];
  });
}

function lostMotionOf(item: Reading): readonly number[] {
  if (isPair(item)) return [Math.abs(item.advancing - item.retracting)];
  return isPositioning(item) ? [] : [Math.abs(item.backlash)];
}

function positionDoubt(
  sample: readonly Reading[],
  read: Read,
  units: Units,
  travel: Travel | undefined,
): UnitDoubt | undefined {
  if (travel === undefined) return undefined;
  const places = sample.map((item) => (isPositioning(item) ? item.target : item.position));
  const least = places.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY);
  const greatest = places.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY);
  const length = travel.to - travel.from;
  const fits = (factor: number): boolean =>
    least * factor >= travel.from - SLACK * length && greatest * factor <= travel.to + SLACK * length;
  const covers = (factor: number): boolean => (greatest - least) * factor > length / 2;
  const isCramped = fits(1) && (greatest - least) * 10 < length && new Set(places).size >= LEAST_PLACES;
  const isOutside =
    places.filter((place) => place < travel.from || place > travel.to).length * 2 > places.length;
  if (!isCramped && !isOutside) return undefined;
  const what = `the positions go from ${figure(least)} to ${figure(greatest)} ${units}, on a travel of ${figure(length)} ${units}`;
  const doubt = doubtAbout(read, ["position", "target"], { of: "position", what }, (unit) =>
    (isCramped ? CRAMPED_UNITS : POSITION_UNITS).filter((candidate) => {
      const factor = scaleOf(candidate) / scaleOf(unit);
      return fits(factor) && covers(factor);
    }),
  );
  return doubt?.likely.length === 0 ? undefined : doubt;
}

/** Millimetres in one of a unit. */
function scaleOf(unit: string): number {
  const found = lengthUnit(unit);
  return found === undefined ? 1 : millimetresIn(found);
}

function median(values: readonly number[]): number | undefined {
  return [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];
}

function figure(value: number): string {
  return String(Number(value.toPrecision(4)));
}
