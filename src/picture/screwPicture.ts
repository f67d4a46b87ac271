import type { Assessment } from "../analysis/assessment.ts";
import type { Interval } from "../analysis/decide/settings.ts";
import { type Lengths, lengthsIn } from "../inspection/lengths.ts";
import type { Slide } from "../inspection/schema.ts";
import { fromMillimetres } from "../inspection/units.ts";
import { type Axis, exactAxis } from "./axis.ts";
import { evennessOf } from "./evenness.ts";
import type { LabelledInterval, SpotMark } from "./profilePicture.ts";
import { describeScrew } from "./screwDescription.ts";

/** A stretch of the screw with the least that it has worn by, both flanks together. */
export interface WornInterval extends LabelledInterval {
  readonly atLeast: number;
}

/** The thread as it is drawn. Lengths along the screw, in the reader's unit. */
export interface DrawnThread {
  /** From one drawn thread to the next. */
  readonly pitch: number;
  readonly starts: number;
  readonly hand: "right" | "left";
  /** How far along the screw one flank reaches from root to crest, as a share of the pitch. */
  readonly flankShare: number;
  /** How many threads of the screw each drawn one stands for; 1 where there is room for all. */
  readonly standsFor: number;
}

/**
 * What the picture of the screw shows, in the reader's unit: the screw from the side, where x is the position of the
 * slide whose nut has its middle there. A plain object, so that whatever draws it draws the same.
 */
export interface ScrewPicture {
  readonly title: string;
  /** The picture in words, for those who cannot see it. */
  readonly description: string;
  /** All of the screw that the nut meets: half its length beyond either end of the travel. */
  readonly axis: Axis;
  readonly travel: Interval;
  readonly thread: DrawnThread;
  readonly worn: readonly WornInterval[];
  /** How many times as large as it is wear is drawn. */
  readonly exaggeration: number;
  /** The stretch that the nut engages; null where no nut is drawn. */
  readonly nut: LabelledInterval | null;
  /** The loosest and the tight spot; none where the readings do not show that lost motion differs. */
  readonly spots: readonly Pick<SpotMark, "x" | "name" | "label">[];
}

/** How far across the screw is drawn on paper, in pixels. */
const ON_PAPER = 912;
/** Room that a thread and a figure on the scale take, in pixels. */
const THREAD_ROOM = 8.29;
const TICK_ROOM = 91.2;
/** The deepest wear is drawn as no more than this share of the pitch, of which half is thread. */
const DEEPEST_SHARE = 0.3;

/** Half angles of 15° over half a pitch of depth reach so far; a form that is not named here is drawn so, too. */
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
 * @param nutAt slide position, in millimetres, that the nut is drawn at; no nut is drawn without one
 * @param across how far across the screw is drawn, in pixels: where there is less room, fewer threads and figures
 */
export function screwPicture(
  assessment: Assessment,
  slide: Slide,
  nutAt?: number,
  across = ON_PAPER,
): ScrewPicture {
  const { units } = slide;
  const lengths = lengthsIn(units, assessment.resolution);
  const length = (millimetres: number): number => fromMillimetres(millimetres, units);
  const { travel, engagedLength } = assessment.settings;
  const reach = engagedLength / 2;
  const from = length(travel.from - reach);
  const to = length(travel.to + reach);
  const thread = threadOf(slide, to - from, Math.floor(across / THREAD_ROOM));
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
      Math.max(2, Math.floor(across / TICK_ROOM)),
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

/** The largest of 1, 2, 5, 10, 20 … by which a length can be multiplied without coming to more than there is room for. */
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
