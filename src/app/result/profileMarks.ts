import type { Chart, Plugin } from "chart.js";
import type { Palette } from "../../picture/palette.ts";
import type { Box } from "../../picture/placeLabels.ts";
import { LABEL_SIZE, type ProfileFrame } from "../../picture/profileFrame.ts";
import {
  type LabelRole,
  nearestPoint,
  type PlacedLabel,
  profileLabels,
} from "../../picture/profileLabels.ts";
import type { Point, ProfilePicture } from "../../picture/profilePicture.ts";
import type { Shown } from "./shown.ts";

const HATCH_STEP = 8;
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
      hatching(chart.ctx, frame, shown());
      limitLine(chart.ctx, frame, shown());
      spots(chart.ctx, frame, shown());
      placed = placedIn(frame, shown().picture, placed);
      drawLabels(chart.ctx, placed.labels, shown().look);
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

function frameOf({ chartArea, scales, width, height }: Chart<"line">): ProfileFrame {
  const { left, top, right, bottom } = chartArea;
  const plot: Box = { x: left, y: top, width: right - left, height: bottom - top };
  const x = (value: number): number => scales.x?.getPixelForValue(value) ?? left;
  const y = (value: number): number => scales.y?.getPixelForValue(value) ?? bottom;
  return { width, height, plot, screw: null, x, y, at: (point) => ({ x: x(point.x), y: y(point.y) }) };
}

type Draw = (context: CanvasRenderingContext2D, frame: ProfileFrame, shown: Shown) => void;

const outsideWorkingRange: Draw = (context, { plot, x }, { picture: { workingRange }, look }) => {
  if (workingRange === null) return;
  context.fillStyle = look.outside;
  const from = x(workingRange.from);
  const to = x(workingRange.to);
  context.fillRect(plot.x, plot.y, from - plot.x, plot.height);
  context.fillRect(to, plot.y, plot.x + plot.width - to, plot.height);
};

const hatching: Draw = (context, { plot, y, at }, { picture: { exceeding, limit }, look }) => {
  if (exceeding.length === 0) return;
  context.save();
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
  context.beginPath();
  for (let start = plot.x - plot.height; start < plot.x + plot.width; start += HATCH_STEP) {
    context.moveTo(start, plot.y + plot.height);
    context.lineTo(start + plot.height, plot.y);
  }
  context.stroke();
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

function drawLabels(context: CanvasRenderingContext2D, labels: readonly PlacedLabel[], look: Palette): void {
  const colours: Readonly<Record<LabelRole, string>> = {
    limit: look.limit,
    spot: look.ink,
    median: look.ink,
    afterAdjusting: look.nut,
  };
  context.save();
  context.textAlign = "center";
  context.textBaseline = "middle";
  for (const { role, text, box, leaderTo } of labels) {
    const middle = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
    if (leaderTo !== null) leader(context, nearestPoint(leaderTo, box), leaderTo, look);
    context.font = `${role === "spot" ? 700 : 500} ${LABEL_SIZE}px ${getComputedStyle(context.canvas).fontFamily}`;
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
