import type { Chart, ChartArea, Plugin } from "chart.js";
import type { Palette } from "../../../picture/palette.ts";
import type { Box } from "../../../picture/placeLabels.ts";
import { LABEL_SIZE, type ProfileFrame } from "../../../picture/profileFrame.ts";
import {
  type LabelRole,
  nearestPoint,
  type PlacedLabel,
  profileLabels,
  wornBars,
} from "../../../picture/profileLabels.ts";
import type { Point, ProfilePicture } from "../../../picture/profilePicture.ts";
import { sideBySide } from "../../../picture/sideBySide.ts";
import { struckMarks } from "../../../picture/struckMarks.ts";
import type { Shown } from "./shown.ts";

const HATCH_STEP = 8;
const BAR_HATCH_STEP = 4;
const READING_RADIUS = 4;
/** From one to the next of readings that came to the same. */
const READING_STEP = 7;
/** Narrower than this, the labels of the spots leave their figures to the text beside the picture. */
const NARROW = 480;

/** What the chart has beside its lines: the working range, the limit, the hatching, the spots and the labels. */
export function marksOf(shown: () => Shown): Plugin<"line"> {
  let placed: Placed | null = null;
  return {
    id: "marks",
    beforeDatasetsDraw(chart) {
      outsideWorkingRange(chart.ctx, frameOf(chart), shown());
    },
    afterDatasetsDraw(chart) {
      const frame = frameOf(chart);
      wornParts(chart.ctx, frame, shown());
      hatching(chart.ctx, frame, shown());
      limitLine(chart.ctx, frame, shown());
      readings(chart.ctx, frame, shown());
      spots(chart.ctx, frame, shown());
      placed = placedIn(frame, shown().picture, placed);
      drawLabels(chart.ctx, placed.labels, shown());
    },
  };
}

/** Labels as they were placed: kept, since the chart is drawn anew at every move of the pointer. */
interface Placed {
  readonly labels: readonly PlacedLabel[];
  readonly picture: ProfilePicture;
  readonly size: string;
}

function placedIn(frame: ProfileFrame, picture: ProfilePicture, before: Placed | null): Placed {
  const size = JSON.stringify(frame.plot);
  if (before !== null && before.picture === picture && before.size === size) return before;
  return { labels: profileLabels(sized(picture, frame), frame), picture, size };
}

/** The part within the axes, in pixels. */
export function plotOf({ left, top, right, bottom }: ChartArea): Box {
  return { x: left, y: top, width: right - left, height: bottom - top };
}

function frameOf({ chartArea, scales, width, height }: Chart<"line">): ProfileFrame {
  const { left, bottom } = chartArea;
  const plot = plotOf(chartArea);
  const x = (value: number): number => scales.x?.getPixelForValue(value) ?? left;
  const y = (value: number): number => scales.y?.getPixelForValue(value) ?? bottom;
  return { width, height, plot, screw: null, x, y, at: (point) => ({ x: x(point.x), y: y(point.y) }) };
}

type Draw = (context: CanvasRenderingContext2D, frame: ProfileFrame, shown: Shown) => void;

const outsideWorkingRange: Draw = (context, { plot, x }, { picture: { workingRange }, look }) => {
  if (workingRange === null) return;
  context.fillStyle = look.outside;
  const right = plot.x + plot.width;
  const within = (edge: number): number => Math.min(Math.max(edge, plot.x), right);
  const from = within(x(workingRange.from));
  const to = within(x(workingRange.to));
  context.fillRect(plot.x, plot.y, from - plot.x, plot.height);
  context.fillRect(to, plot.y, right - to, plot.height);
};

const hatching: Draw = (context, { plot, y, at }, { picture: { exceeding, limit }, look }) => {
  if (exceeding.length === 0) return;
  context.save();
  clipTo(context, plot);
  context.beginPath();
  for (const part of exceeding) {
    const points = part.map(at);
    const [first, last] = [points[0], points.at(-1)];
    if (first === undefined || last === undefined) continue;
    context.moveTo(first.x, y(limit.y));
    for (const point of points) context.lineTo(point.x, point.y);
    context.lineTo(last.x, y(limit.y));
  }
  context.clip();
  context.strokeStyle = look.limit;
  context.globalAlpha = 0.7;
  hatch(context, plot, HATCH_STEP);
  context.restore();
};

/** Where the screw has worn, as a part cut open on the foot of the plot. */
const wornParts: Draw = (context, frame, { picture, look }) => {
  context.save();
  context.strokeStyle = look.screw;
  for (const bar of wornBars(picture, frame)) {
    context.fillStyle = look.screwBody;
    context.fillRect(bar.x, bar.y, bar.width, bar.height);
    context.lineWidth = 1.5;
    context.strokeRect(bar.x, bar.y, bar.width, bar.height);
    context.save();
    clipTo(context, bar);
    context.lineWidth = 1;
    hatch(context, bar, BAR_HATCH_STEP);
    context.restore();
  }
  context.restore();
};

function clipTo(context: CanvasRenderingContext2D, { x, y, width, height }: Box): void {
  context.beginPath();
  context.rect(x, y, width, height);
  context.clip();
}

function hatch(context: CanvasRenderingContext2D, box: Box, step: number): void {
  context.beginPath();
  for (let start = box.x - box.height; start < box.x + box.width; start += step) {
    context.moveTo(start, box.y + box.height);
    context.lineTo(start + box.height, box.y);
  }
  context.stroke();
}

/** Readings as open circles, struck ones as crosses. */
const readings: Draw = (context, frame, { picture, look }) => {
  context.save();
  context.lineWidth = 1.75;
  context.strokeStyle = look.paleInk;
  for (const mark of struckMarks(picture, frame)) context.stroke(new Path2D(mark));
  context.strokeStyle = look.ink;
  context.fillStyle = look.paper;
  for (const { x, y } of sideBySide(picture.readings.map(frame.at), READING_STEP)) {
    context.beginPath();
    context.arc(x, y, READING_RADIUS, 0, 2 * Math.PI);
    context.fill();
    context.stroke();
  }
  context.restore();
};

const limitLine: Draw = (context, { plot, y }, { picture: { limit }, look }) => {
  context.save();
  context.strokeStyle = look.limit;
  context.lineWidth = 2;
  context.setLineDash([9, 6]);
  context.beginPath();
  context.moveTo(plot.x, y(limit.y));
  context.lineTo(plot.x + plot.width, y(limit.y));
  context.stroke();
  context.restore();
};

const spots: Draw = (context, { at }, { picture, look }) => {
  context.fillStyle = look.ink;
  for (const { x, y } of picture.spots.map(at)) {
    context.beginPath();
    context.moveTo(x, y - 7);
    context.lineTo(x + 7, y);
    context.lineTo(x, y + 7);
    context.lineTo(x - 7, y);
    context.fill();
  }
};

function drawLabels(
  context: CanvasRenderingContext2D,
  labels: readonly PlacedLabel[],
  { look, fonts }: Shown,
): void {
  const colours: Readonly<Record<LabelRole, string>> = {
    limit: look.limit,
    spot: look.ink,
    median: look.ink,
    afterAdjusting: look.nut,
    worn: look.screw,
  };
  context.save();
  context.textAlign = "center";
  context.textBaseline = "middle";
  for (const { role, text, box, leaderTo } of labels) {
    const middle = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
    if (leaderTo !== null) leader(context, nearestPoint(leaderTo, box), leaderTo, look);
    context.font = `${role === "spot" ? 700 : 500} ${LABEL_SIZE}px ${fonts}`;
    // A rim of the ground keeps the words legible over lines and hatching.
    context.lineWidth = 4;
    context.lineJoin = "round";
    context.strokeStyle = look.paper;
    context.strokeText(text, middle.x, middle.y);
    context.fillStyle = colours[role];
    context.fillText(text, middle.x, middle.y);
  }
  context.restore();
}

/** The picture with labels that fit the width it is drawn at. */
function sized(picture: ProfilePicture, { plot }: ProfileFrame): ProfilePicture {
  if (plot.width >= NARROW) return picture;
  return {
    ...picture,
    spots: picture.spots.map((spot) => ({ ...spot, label: spot.name })),
    median: { ...picture.median, label: "" },
    wornZones: picture.wornZones.map((zone) => ({ ...zone, label: "worn screw" })),
    afterAdjusting: picture.afterAdjusting && {
      ...picture.afterAdjusting,
      label: picture.afterAdjusting.short,
    },
  };
}

function leader(context: CanvasRenderingContext2D, from: Point, to: Point, look: Palette): void {
  context.strokeStyle = look.paleInk;
  context.lineWidth = 1;
  context.beginPath();
  context.moveTo(from.x, from.y);
  context.lineTo(to.x, to.y);
  context.stroke();
}
