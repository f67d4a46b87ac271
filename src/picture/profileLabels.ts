import type { Interval } from "../analysis/decide/settings.ts";
import { heightAt } from "./heightAt.ts";
import type { Point } from "./linesAbove.ts";
import { type Box, type Candidate, type LabelRequest, placeLabels } from "./placeLabels.ts";
import { LABEL_SIZE, type ProfileFrame } from "./profileFrame.ts";
import type { LabelledLine, ProfilePicture } from "./profilePicture.ts";

export type LabelRole = "limit" | "spot" | "median" | "afterAdjusting" | "worn";

export interface PlacedLabel {
  readonly role: LabelRole;
  readonly text: string;
  readonly box: Box;
  /** The end of the leader line; null if the label stands beside its mark. */
  readonly leaderTo: Point | null;
}

interface Wish extends LabelRequest {
  readonly role: LabelRole;
  readonly text: string;
  /** The mark of a label at a place, for a leader line; null for none. */
  readonly markFor: (box: Box) => Point | null;
}

/** Mean width of a letter of a bold sans-serif type, in parts of its size: wide enough for any weight. */
const LETTER_WIDTH = 0.61;
export const LINE_HEIGHT = LABEL_SIZE * 1.25;
const GAP = 12;
/** A label farther than this from its mark gets a leader line, in pixels. */
const LEADER_FROM = 14;
/** Reluctance per row away from a line, per row away from a mark, and for the other side of it. */
const FAR = 12;
const FAR_FROM_MARK = 50;
const WRONG_SIDE = 20;
const READING_SIZE = 9;
export const LINE_SAMPLE = 5;
const BAND_EDGE = 1.5;
/** Height of the bar of a worn zone on the foot of the plot, as a share of the plot's height. */
export const WORN_BAR_SHARE = 0.028;

/** Places every label of the plot beside its mark. Labels without room are left out. */
export function profileLabels(picture: ProfilePicture, frame: ProfileFrame): readonly PlacedLabel[] {
  const wishes = wishesOf(picture, frame);
  const boxes = placeLabels(wishes, obstaclesOf(picture, frame), frame.plot);
  return wishes.flatMap(({ role, text, markFor }, index) => {
    const box = boxes[index] ?? null;
    if (box === null) return [];
    const mark = markFor(box);
    return [{ role, text, box, leaderTo: mark !== null && distance(mark, box) > LEADER_FROM ? mark : null }];
  });
}

/** An upper estimate of the width of a label, in pixels. */
export function textWidth(text: string): number {
  return text.length * LABEL_SIZE * LETTER_WIDTH;
}

function wishesOf(picture: ProfilePicture, frame: ProfileFrame): readonly Wish[] {
  const { limit, spots, median, afterAdjusting } = picture;
  const wish = (
    role: LabelRole,
    text: string,
    candidatesFor: (width: number) => readonly Candidate[],
    markFor: Wish["markFor"],
  ): Wish => {
    const width = textWidth(text);
    return { role, text, markFor, width, height: LINE_HEIGHT, candidates: candidatesFor(width) };
  };
  const alongCurve = (role: LabelRole, { label, points }: LabelledLine): Wish => {
    const line = points.map(frame.at);
    return wish(role, label, alongLine(line, frame.plot), (box) => {
      const x = box.x + box.width / 2;
      return { x, y: heightAt(line, x) };
    });
  };
  return [
    ...spots.map((spot) => {
      const mark = frame.at(spot);
      return wish(
        "spot",
        spot.label,
        around(mark, spot.name === "tight spot" ? "below" : "above"),
        () => mark,
      );
    }),
    wish("limit", limit.label, alongLevel(frame.y(limit.y), frame.plot), () => null),
    ...(afterAdjusting === null ? [] : [alongCurve("afterAdjusting", afterAdjusting)]),
    alongCurve("median", median),
    // If the screw is drawn under the plot, its labels are there.
    ...(frame.screw === null
      ? picture.wornZones.map((zone) =>
          wish("worn", zone.label, overBar(zone, frame), () => topOfBar(zone, frame)),
        )
      : []),
  ];
}

/** Places around a mark, near ones on the wanted side first. */
function around(mark: Point, side: "above" | "below") {
  return (width: number): readonly Candidate[] => {
    const columns = [mark.x - width / 2, mark.x + GAP, mark.x - GAP - width];
    const levels = side === "above" ? [above, below] : [below, above];
    return [1, 2, 3, 4, 5].flatMap((row) =>
      levels.flatMap((level, index) =>
        columns.map((x, column) => ({
          x,
          y: level(mark.y, row),
          reluctance: FAR_FROM_MARK * (row - 1) + WRONG_SIDE * index + column,
        })),
      ),
    );
  };
}

/** Places above the bar of a worn zone, low ones first. */
function overBar({ from, to }: Interval, { plot, x }: ProfileFrame) {
  return (width: number): readonly Candidate[] => {
    const wished = (x(from) + x(to) - width) / 2;
    const left = Math.min(Math.max(wished, plot.x), plot.x + plot.width - width);
    return [1, 2, 3, 4, 5, 6].map((row) => ({
      x: left,
      y: above(topOfBars(plot), row),
      reluctance: FAR * row,
    }));
  };
}

function topOfBar({ from, to }: Interval, { plot, x }: ProfileFrame): Point {
  return { x: (x(from) + x(to)) / 2, y: topOfBars(plot) };
}

function topOfBars({ y, height }: Box): number {
  return y + height * (1 - WORN_BAR_SHARE);
}

/** Places above and below a level line, from its right end leftwards. */
export function alongLevel(level: number, plot: Box) {
  return (width: number): readonly Candidate[] =>
    [1, 0.9, 0.8, 0.7, 0.6, 0.5, 0.4, 0.3, 0.2, 0.1, 0].flatMap((share) => {
      const x = plot.x + GAP + share * (plot.width - width - 2 * GAP);
      return [1, 2].flatMap((row) =>
        [above(level, row), below(level, row)].map((y) => ({
          x,
          y,
          reluctance: (1 - share + row - 1) * FAR,
        })),
      );
    });
}

/** Places above and below a line, all along it, near it and near its right end first. */
export function alongLine(line: readonly Point[], plot: Box) {
  return (width: number): readonly Candidate[] =>
    line.flatMap(({ x, y }) => {
      const fromRight = (plot.x + plot.width - x) / plot.width;
      return [1, 1.5, 2, 3].flatMap((row) =>
        [above(y, row), below(y, row)].map((top) => ({
          x: x - width / 2,
          y: top,
          reluctance: FAR * (row - 1 + fromRight),
        })),
      );
    });
}

/** The top of a label in the given row above or below a level, counted from it. */
const above = (level: number, row: number): number => level - GAP / 2 - row * LINE_HEIGHT;
const below = (level: number, row: number): number => level + GAP / 2 + (row - 1) * LINE_HEIGHT;

/** What labels should not cover: readings, lines, and a little less the edges of the band. */
function obstaclesOf(picture: ProfilePicture, frame: ProfileFrame): readonly Box[] {
  const { readings, median, band, afterAdjusting, limit, xAxis } = picture;
  const limitLine = [xAxis.from, xAxis.to].map((x) => ({ x, y: limit.y }));
  const lower = band.map(({ x, low }) => ({ x, y: low }));
  const upper = band.map(({ x, high }) => ({ x, y: high }));
  const along = (line: readonly Point[], size: number): readonly Box[] =>
    sampled(line.map(frame.at)).map((point) => square(point, size));
  return [
    ...readings.map((reading) => square(frame.at(reading), READING_SIZE)),
    ...[median.points, afterAdjusting?.points ?? [], limitLine].flatMap((line) => along(line, LINE_SAMPLE)),
    ...[lower, upper].flatMap((edge) => along(edge, BAND_EDGE)),
    ...wornBars(picture, frame),
  ];
}

/** The bars of worn zones on the foot of the plot; none if the screw is drawn under it. */
function wornBars({ wornZones }: ProfilePicture, { screw, plot, x }: ProfileFrame): readonly Box[] {
  if (screw !== null) return [];
  return wornZones.map(({ from, to }) => ({
    x: x(from),
    y: topOfBars(plot),
    width: x(to) - x(from),
    height: plot.height * WORN_BAR_SHARE,
  }));
}

export function square({ x, y }: Point, size: number): Box {
  return { x: x - size / 2, y: y - size / 2, width: size, height: size };
}

/** Points along a line, no farther apart than `LINE_SAMPLE`. */
export function sampled(line: readonly Point[]): readonly Point[] {
  return line.flatMap((point, index) => {
    const before = line[index - 1];
    if (before === undefined) return [point];
    const steps = Math.ceil(Math.hypot(point.x - before.x, point.y - before.y) / LINE_SAMPLE);
    return Array.from({ length: steps }, (_, step) => ({
      x: before.x + ((point.x - before.x) * (step + 1)) / steps,
      y: before.y + ((point.y - before.y) * (step + 1)) / steps,
    }));
  });
}

/** The point of a box that is nearest to a mark. */
export function nearestPoint(mark: Point, box: Box): Point {
  return {
    x: Math.min(Math.max(mark.x, box.x), box.x + box.width),
    y: Math.min(Math.max(mark.y, box.y), box.y + box.height),
  };
}

function distance(mark: Point, box: Box): number {
  const nearest = nearestPoint(mark, box);
  return Math.hypot(nearest.x - mark.x, nearest.y - mark.y);
}
