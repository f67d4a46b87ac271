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
import type { Axis } from "../../../picture/axis.ts";
import type { Palette } from "../../../picture/palette.ts";
import type { Point } from "../../../picture/profilePicture.ts";
import type { Places } from "./places.ts";
import { marksOf, plotOf } from "./profileMarks.ts";
import type { Shown } from "./shown.ts";

Chart.register(Filler, LinearScale, LineController, LineElement, PointElement);

/** How far a mark reaches beyond its place, in pixels. */
const MARK = 8;

export interface DrawnProfile {
  /** Draws what is to be shown now. @returns where it came to be */
  show(next: Shown): Places;
  destroy(): void;
}

/** Draws the picture of a profile on a canvas, of the page or of a worker, and again as it changes. */
export function drawProfile(canvas: HTMLCanvasElement | OffscreenCanvas, first: Shown): DrawnProfile {
  let shown = first;
  // Chart.js asks of a canvas in a worker no more than it has, but does not say so in its types.
  const chart = new Chart(canvas as HTMLCanvasElement, {
    type: "line",
    data: { datasets: [] },
    options: optionsOf(first),
    plugins: [marksOf(() => shown)],
  });
  return {
    show(next) {
      shown = next;
      chart.data.datasets = datasetsOf(next);
      chart.options = optionsOf(next);
      if (!isOfSize(chart, next)) chart.resize(next.width, next.height);
      chart.update();
      return placesOn(chart, next);
    },
    destroy: () => chart.destroy(),
  };
}

function isOfSize(
  { width, height, currentDevicePixelRatio }: Chart<"line">,
  next: Pick<Shown, "width" | "height" | "ratio">,
): boolean {
  return width === next.width && height === next.height && currentDevicePixelRatio === next.ratio;
}

function placesOn({ chartArea }: Chart<"line">, { picture: { xAxis, yAxis } }: Shown): Places {
  return {
    plot: plotOf(chartArea),
    x: { from: xAxis.from, to: xAxis.to },
    y: { from: yAxis.from, to: yAxis.to },
  };
}

function optionsOf({ picture, look, fonts, ratio }: Shown): ChartOptions<"line"> {
  return {
    animation: false,
    events: [],
    responsive: false,
    maintainAspectRatio: false,
    devicePixelRatio: ratio,
    parsing: false,
    normalized: true,
    font: { family: fonts },
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
