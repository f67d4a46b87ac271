import {
  Chart,
  type ChartDataset,
  type ChartOptions,
  Filler,
  LinearScale,
  LineController,
  LineElement,
  PointElement,
} from "chart.js";
import type { Axis } from "../../picture/axis.ts";
import type { Palette } from "../../picture/palette.ts";
import type { Point } from "../../picture/profilePicture.ts";
import { marksOf } from "./profileMarks.ts";
import type { Shown } from "./shown.ts";

export { profileSvg } from "../../picture/profileSvg.ts";

Chart.register(Filler, LinearScale, LineController, LineElement, PointElement);

/** How far a mark reaches beyond its place, in pixels. */
const MARK = 8;

export interface DrawnProfile {
  show(next: Shown): void;
  /** Where a place of the picture is on the canvas, in pixels. */
  pixelOf(point: Point): Point;
  /** The position that is so far across the canvas, in the reader's unit. */
  positionAt(across: number): number;
  destroy(): void;
}

/**
 * Draws the picture of a profile on a canvas, and again as it changes.
 *
 * @param laidOut is told when places may have come to be elsewhere on the canvas
 */
export function drawProfile(canvas: HTMLCanvasElement, first: Shown, laidOut: () => void): DrawnProfile {
  let shown = first;
  const chart = new Chart(canvas, {
    type: "line",
    data: { datasets: datasetsOf(first) },
    options: { ...optionsOf(first), onResize: laidOut },
    plugins: [marksOf(() => shown)],
  });
  return {
    show(next) {
      shown = next;
      chart.data.datasets = datasetsOf(next);
      chart.options = { ...optionsOf(next), onResize: laidOut };
      chart.update();
    },
    pixelOf: ({ x, y }) => ({
      x: chart.scales.x?.getPixelForValue(x) ?? 0,
      y: chart.scales.y?.getPixelForValue(y) ?? 0,
    }),
    positionAt: (across) => chart.scales.x?.getValueForPixel(across) ?? 0,
    destroy: () => chart.destroy(),
  };
}

function optionsOf({ picture, look }: Shown): ChartOptions<"line"> {
  return {
    animation: false,
    events: [],
    maintainAspectRatio: false,
    parsing: false,
    normalized: true,
    // What is read at the end of the travel is drawn whole.
    layout: { padding: { right: MARK } },
    scales: { x: scaleOf(picture.xAxis, look), y: scaleOf(picture.yAxis, look) },
  };
}

/** Chart.js draws the last first: the band at the bottom. */
function datasetsOf({ picture, look }: Shown): ChartDataset<"line", Point[]>[] {
  const { band, median, afterAdjusting } = picture;
  const edge = { borderWidth: 0, pointRadius: 0 };
  const line = { borderWidth: 2.5, pointRadius: 0 };
  const left = { ...line, borderColor: look.nut, borderDash: [2, 4] };
  return [
    { ...line, data: [...median.points], borderColor: look.ink },
    ...(afterAdjusting === null ? [] : [{ ...left, data: [...afterAdjusting.points] }]),
    { ...edge, data: band.map(({ x, high }) => ({ x, y: high })), fill: "+1", backgroundColor: look.band },
    { ...edge, data: band.map(({ x, low }) => ({ x, y: low })) },
  ];
}

function scaleOf({ from, to, ticks, label }: Axis, look: Palette) {
  const labels = new Map(ticks.map((tick) => [tick.at, tick.label]));
  return {
    type: "linear" as const,
    min: from,
    max: to,
    title: { display: true, text: label, color: look.paleInk, font: { size: 13 } },
    grid: { color: look.grid, tickColor: look.paleInk },
    border: { color: look.paleInk },
    afterBuildTicks: (axis: { ticks: { value: number }[] }) => {
      axis.ticks = ticks.map(({ at }) => ({ value: at }));
    },
    ticks: {
      color: look.paleInk,
      font: { size: 13 },
      maxRotation: 0,
      callback: (value: number | string) => labels.get(Number(value)) ?? "",
    },
  };
}
