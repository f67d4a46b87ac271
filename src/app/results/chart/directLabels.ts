import type { Chart, Plugin } from "chart.js";
import type { Palette } from "../../../picture/palette.ts";
import { LABEL_SIZE, type ProfileFrame } from "../../../picture/profileFrame.ts";
import {
  type LabelRole,
  nearestPoint,
  type PlacedLabel,
  profileLabels,
} from "../../../picture/profileLabels.ts";
import type { Point, ProfilePicture } from "../../../picture/profilePicture.ts";
import { struckMarks } from "../../../picture/struckMarks.ts";
import type { Shown } from "./drawProfile.ts";

/** Narrower than this, in pixels, the labels of the spots leave their figures to the text beside the picture. */
const NARROW = 480;

/** Draws what Chart.js has no elements for: labels beside what they name, struck readings and the line of the place that is read off. */
export function directLabels(shown: () => Shown): Plugin<"line"> {
  let placed: { readonly of: Shown; readonly plot: string; readonly labels: readonly PlacedLabel[] } | null =
    null;
  return {
    id: "directLabels",
    afterDatasetsDraw(chart) {
      const now = shown();
      const frame = frameOf(chart);
      const { picture } = now;
      const plot = JSON.stringify(frame.plot);
      if (placed?.of !== now || placed.plot !== plot)
        placed = { of: now, plot, labels: profileLabels(fitted(picture, frame), frame) };
      drawStruck(chart.ctx, struckMarks(picture, frame), now.palette);
      drawLabels(chart.ctx, placed.labels, now);
      drawReadingLine(chart, now.palette);
    },
  };
}

function frameOf({ chartArea, scales, width, height }: Chart<"line">): ProfileFrame {
  const { left, top, right, bottom } = chartArea;
  const plot = { x: left, y: top, width: right - left, height: bottom - top };
  const x = (value: number): number => scales.x?.getPixelForValue(value) ?? left;
  const y = (value: number): number => scales.y?.getPixelForValue(value) ?? bottom;
  return { width, height, plot, screw: null, x, y, at: (point) => ({ x: x(point.x), y: y(point.y) }) };
}

/** The picture with labels that fit the width it is drawn at. */
function fitted(picture: ProfilePicture, { plot }: ProfileFrame): ProfilePicture {
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

function drawStruck(context: CanvasRenderingContext2D, marks: readonly string[], { paleInk }: Palette): void {
  context.save();
  context.lineWidth = 1.75;
  context.strokeStyle = paleInk;
  for (const mark of marks) context.stroke(new Path2D(mark));
  context.restore();
}

function drawLabels(
  context: CanvasRenderingContext2D,
  labels: readonly PlacedLabel[],
  { palette, fonts }: Pick<Shown, "palette" | "fonts">,
): void {
  const colours: Readonly<Record<LabelRole, string>> = {
    limit: palette.limit,
    spot: palette.ink,
    median: palette.ink,
    afterAdjusting: palette.nut,
    worn: palette.screw,
  };
  context.save();
  context.textAlign = "center";
  context.textBaseline = "middle";
  context.lineJoin = "round";
  for (const { role, text, box, leaderTo } of labels) {
    const middle = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
    if (leaderTo !== null) drawLine(context, nearestPoint(leaderTo, box), leaderTo, 1, palette.paleInk);
    context.font = `${role === "spot" ? 700 : 500} ${LABEL_SIZE}px ${fonts}`;
    // A rim of the ground keeps the words legible over lines and hatching.
    context.lineWidth = 4;
    context.strokeStyle = palette.paper;
    context.strokeText(text, middle.x, middle.y);
    context.fillStyle = colours[role];
    context.fillText(text, middle.x, middle.y);
  }
  context.restore();
}

function drawReadingLine(chart: Chart<"line">, { ink }: Palette): void {
  const { top, bottom } = chart.chartArea;
  for (const { element } of chart.getActiveElements())
    drawLine(chart.ctx, { x: element.x, y: top }, { x: element.x, y: bottom }, 1.25, ink);
}

function drawLine(
  context: CanvasRenderingContext2D,
  from: Point,
  to: Point,
  width: number,
  colour: string,
): void {
  context.strokeStyle = colour;
  context.lineWidth = width;
  context.beginPath();
  context.moveTo(from.x, from.y);
  context.lineTo(to.x, to.y);
  context.stroke();
}
