import type { Assessment } from "../../analysis/assessment.ts";
import type { Interval } from "../../analysis/decide/settings.ts";
import { type Lengths, lengthsIn } from "../../inspection/lengths.ts";
import type { Slide } from "../../inspection/schema.ts";
import { fromMillimetres } from "../../inspection/units.ts";
import { type Axis, exactAxis } from "../axis.ts";
import { evennessOf } from "../evenness.ts";
import type { LabelledInterval, SpotMark } from "../profilePicture.ts";

/** An interval of the screw with the lower bound on its wear, both flanks together. */
export interface WornInterval extends LabelledInterval {
  readonly atLeast: number;
}

/** The thread as it is drawn. Lengths along the screw, in the reader's unit. */
export interface DrawnThread {
  /** From one drawn thread to the next. */
  readonly pitch: number;
  readonly starts: number;
  readonly hand: "right" | "left";
  /** Axial length of one flank from root to crest, as a share of the pitch. */
  readonly flankShare: number;
  /** How many threads each drawn thread stands for; 1 if there is room for all. */
  readonly standsFor: number;
}

/**
 * The picture of the screw from the side, in the reader's unit; x is the slide position at which the middle of the nut is
 * there. Plain data for any renderer.
 */
export interface ScrewPicture {
  readonly title: string;
  /** The picture in words, for a screen reader. */
  readonly description: string;
  /** The screw that the nut engages: the travel and half the nut's length beyond either end. */
  readonly axis: Axis;
  readonly travel: Interval;
  readonly thread: DrawnThread;
  readonly worn: readonly WornInterval[];
  /** Factor by which wear is drawn larger than it is. */
  readonly exaggeration: number;
  /** The interval that the nut engages; null if no nut is drawn. */
  readonly nut: LabelledInterval | null;
  /** The tight and the loosest spot; none if the readings do not show that lost motion is uneven. */
  readonly spots: readonly Pick<SpotMark, "x" | "name" | "label">[];
}

/** Width of the drawn screw on paper, in pixels. */
const WIDTH_ON_PAPER = 912;
/** Least width of a thread and of a tick label, in pixels. */
const THREAD_ROOM = 8.29;
const TICK_ROOM = 91.2;
/** The deepest wear is drawn as at most this share of the pitch; half the pitch is thread. */
const DEEPEST_SHARE = 0.3;

/** A flank at 15° over a depth of half a pitch; also used for forms that are not listed. */
const TRAPEZOIDAL_SHARE = 0.134;
const FLANK_SHARES: Readonly<Record<string, number>> = {
  square: 0.02,
  "unified-60": 0.375,
  "metric-60": 0.375,
  "whitworth-55": 0.375,
};

/**
 * Describes the screw of a slide as a picture, in the slide's unit.
 *
 * @param nutAt slide position at which the nut is drawn, in millimetres; undefined for no nut
 * @param width of the drawn screw, in pixels: a narrow drawing has fewer threads and tick labels
 */
export function screwPicture(
  assessment: Assessment,
  slide: Slide,
  nutAt?: number,
  width = WIDTH_ON_PAPER,
): ScrewPicture {
  const { units } = slide;
  const lengths = lengthsIn(units, assessment.resolution);
  const length = (millimetres: number): number => fromMillimetres(millimetres, units);
  const { travel, engagedLength } = assessment.settings;
  const reach = engagedLength / 2;
  const from = length(travel.from - reach);
  const to = length(travel.to + reach);
  const thread = threadOf(slide, to - from, Math.floor(width / THREAD_ROOM));
  const worn = assessment.wornZones.map((zone) => ({
    from: length(zone.from),
    to: length(zone.to),
    atLeast: length(zone.atLeast),
    label: `worn by at least ${lengths.lostMotion(zone.atLeast)}`,
  }));
  const exaggeration = exaggerationFor(
    Math.max(0, ...worn.map(({ atLeast }) => atLeast)),
    DEEPEST_SHARE * thread.pitch,
  );
  return {
    title: titleOf(worn, exaggeration),
    description: describeScrew(assessment, slide, { exaggeration, standsFor: thread.standsFor, nutAt }),
    axis: exactAxis(
      `Position along the travel (${units})`,
      from,
      to,
      Math.max(2, Math.floor(width / TICK_ROOM)),
    ),
    travel: { from: length(travel.from), to: length(travel.to) },
    thread,
    worn,
    exaggeration,
    nut: nutAt === undefined ? null : nutOver(nutAt, engagedLength, lengths),
    spots: spotsOf(assessment, lengths),
  };
}

function titleOf(worn: readonly WornInterval[], exaggeration: number): string {
  if (worn.length === 0) return "The screw along its travel";
  const drawn = exaggeration === 1 ? "wear to scale" : `wear drawn ${exaggeration} times as large as it is`;
  return `The screw along its travel, ${drawn}`;
}

function threadOf({ screw }: Slide, span: number, mostThreads: number): DrawnThread {
  const starts = screw.starts ?? 1;
  const pitch = screw.lead / starts;
  const standsFor = Math.max(1, Math.ceil(span / pitch / mostThreads));
  return {
    pitch: pitch * standsFor,
    starts,
    hand: screw.hand ?? "right",
    flankShare: FLANK_SHARES[screw.form ?? ""] ?? TRAPEZOIDAL_SHARE,
    standsFor,
  };
}

/** The largest of 1, 2, 5, 10, 20 … by which a length can be multiplied without exceeding the room. */
export function exaggerationFor(greatest: number, room: number): number {
  const most = greatest === 0 ? 1 : room / greatest;
  if (most < 2) return 1;
  const power = 10 ** Math.floor(Math.log10(most));
  return ([5, 2, 1].find((factor) => factor * power <= most) ?? 1) * power;
}

function nutOver(at: number, engagedLength: number, { units, position, spot }: Lengths): LabelledInterval {
  return {
    from: fromMillimetres(at - engagedLength / 2, units),
    to: fromMillimetres(at + engagedLength / 2, units),
    label: `nut at ${spot(at)}, ${position(engagedLength)} engaged`,
  };
}

function spotsOf(assessment: Assessment, lengths: Lengths): ScrewPicture["spots"] {
  if (evennessOf(assessment, lengths) !== "uneven") return [];
  const mark = (name: SpotMark["name"], position: number) => ({
    x: fromMillimetres(position, lengths.units),
    name,
    label: `${name}, ${lengths.spot(position)}`,
  });
  return [
    mark("tight spot", assessment.tightSpot.position),
    mark("loosest spot", assessment.loosestSpot.position),
  ];
}

/** How the screw is drawn. */
interface Drawn {
  readonly exaggeration: number;
  readonly standsFor: number;
  /** In millimetres. */
  readonly nutAt: number | undefined;
}

/** The picture of a screw in words, for a screen reader. */
function describeScrew(assessment: Assessment, slide: Slide, drawn: Drawn): string {
  const lengths = lengthsIn(slide.units, assessment.resolution);
  const { travel, engagedLength } = assessment.settings;
  const { wornZones } = assessment;
  const { exaggeration, standsFor, nutAt } = drawn;
  const sentences = [
    `The screw from the side, over the travel from ${lengths.position(travel.from)} to ${lengths.position(travel.to)} and half the nut's length beyond`,
    ...(wornZones.length === 0
      ? [unwornWords(slide)]
      : wornZones.map(
          ({ from, to, atLeast }) =>
            `Worn by at least ${lengths.lostMotion(atLeast)}, both flanks together, from about ${lengths.spot(from)} to ${lengths.spot(to)}`,
        )),
    ...(wornZones.length === 0 || exaggeration === 1
      ? []
      : [`Wear is drawn ${exaggeration} times as large as it is, half of it on either flank`]),
    ...(standsFor === 1 ? [] : [`Each thread drawn stands for ${standsFor}`]),
    ...(nutAt === undefined
      ? []
      : [`The nut, ${lengths.position(engagedLength)} long, is drawn at about ${lengths.spot(nutAt)}`]),
  ];
  return `${sentences.join(". ")}.`;
}

function unwornWords({ nut }: Slide): string {
  return nut?.kind === "two-halves"
    ? "Each half of the nut bears on a flank of its own, so where the screw has worn cannot be told place by place"
    : "The readings show no wear of the screw in one place more than in another";
}
