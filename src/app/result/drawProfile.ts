import {
  Chart,
  type ChartDataset,
  type ChartOptions,
  Filler,
  LinearScale,
  LineController,
  LineElement,
  PointElement,
  Tooltip,
} from "chart.js";
import type { Axis } from "../../picture/axis.ts";
import type { Palette } from "../../picture/palette.ts";
import type { Point } from "../../picture/profilePicture.ts";
import { capitalised } from "../../report/words.ts";
import { marksOf } from "./profileMarks.ts";
import type { Shown } from "./shown.ts";

Chart.register(Filler, LinearScale, LineController, LineElement, PointElement, Tooltip);

export interface DrawnProfile {
  show(next: Shown): void;
  destroy(): void;
}

/** Draws the picture of a profile on a canvas, and again as it changes. */
export function drawProfile(canvas: HTMLCanvasElement, first: Shown): DrawnProfile {
  let shown = first;
  const chart = new Chart(canvas, {
    type: "line",
    data: { datasets: datasetsOf(first) },
    options: optionsOf(first),
    plugins: [marksOf(() => shown)],
  });
  return {
    show(next) {
      shown = next;
      chart.data.datasets = datasetsOf(next);
      chart.options = optionsOf(next);
      chart.update();
    },
    destroy: () => chart.destroy(),
  };
}

function optionsOf({ picture, look }: Shown): ChartOptions<"line"> {
  return {
    animation: false,
    maintainAspectRatio: false,
    parsing: false,
    normalized: true,
    interaction: { mode: "nearest", axis: "x", intersect: false },
    scales: { x: scaleOf(picture.xAxis, look), y: scaleOf(picture.yAxis, look) },
    plugins: {
      tooltip: {
        backgroundColor: look.ink,
        titleColor: look.paper,
        bodyColor: look.paper,
        displayColors: false,
        filter: ({ dataset }) => dataset.label !== undefined,
        callbacks: {
          title: ([item]) => (item === undefined ? "" : `${round(item.parsed.x, 1)} ${picture.units}`),
          label: ({ dataset, parsed }) =>
            `${dataset.label}: ${round(parsed.y, picture.units === "in" ? 4 : 3)} ${picture.units}`,
        },
      },
    },
  };
}

function round(value: number | null, decimals: number): number {
  return Number((value ?? 0).toFixed(decimals));
}

/** Chart.js draws the last first: the band at the bottom, the readings on top. */
function datasetsOf({ picture, look }: Shown): ChartDataset<"line", Point[]>[] {
  const { band, median, afterAdjusting, readings } = picture;
  const edge = { borderWidth: 0, pointRadius: 0, pointHitRadius: 0 };
  const line = { borderWidth: 2.5, pointRadius: 0 };
  const left = { ...line, borderColor: look.nut, borderDash: [2, 4] };
  return [
    {
      label: "Reading",
      data: [...readings],
      showLine: false,
      clip: false,
      pointRadius: 4,
      pointBackgroundColor: look.paper,
      pointBorderColor: look.ink,
      pointBorderWidth: 1.75,
    },
    { ...line, label: "Lost motion", data: [...median.points], borderColor: look.ink },
    ...(afterAdjusting === null
      ? []
      : [{ ...left, label: capitalised(afterAdjusting.short), data: [...afterAdjusting.points] }]),
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
