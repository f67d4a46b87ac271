import {
  Chart,
  type ChartDataset,
  type ChartOptions,
  Filler,
  Interaction,
  type InteractionModeFunction,
  LinearScale,
  LineController,
  LineElement,
  type Plugin,
  PointElement,
} from "chart.js";
import { getRelativePosition } from "chart.js/helpers";
import type { Interval } from "../../../analysis/decide/settings.ts";
import type { Axis } from "../../../picture/axis.ts";
import type { Palette } from "../../../picture/palette.ts";
import { WORN_BAR_SHARE } from "../../../picture/profileLabels.ts";
import type { Point, ProfilePicture } from "../../../picture/profilePicture.ts";
import { sideBySide } from "../../../picture/sideBySide.ts";
import { directLabels } from "./directLabels.ts";
import { hatching } from "./hatching.ts";
import { nearestStop, type Stop, stopsAlong } from "./readingOff.ts";

declare module "chart.js" {
  interface InteractionModeMap {
    stop: InteractionModeFunction;
  }
}

/** What the chart shows, in the colours of the page. */
export interface Shown {
  readonly picture: ProfilePicture;
  /** The place that is read off, in the reader's unit; null for none. */
  readonly at: number | null;
  readonly palette: Palette;
  /** Fonts in the order of preference, as in CSS. */
  readonly fonts: string;
}

export interface DrawnProfile {
  /** Draws the chart again. */
  show(next: Shown): void;
  /** Marks the place that is read off. */
  readOff(at: Shown["at"]): void;
  /** The place to read off for a pointer event on the chart, in the reader's unit. */
  stopAt(event: PointerEvent): number | null;
  /** The position along the travel of a number of pixels across the chart, in the reader's unit. */
  positionAt(pixels: number): number;
  destroy(): void;
}

/** Marks may stand out of the plot by so many pixels. */
const MARK = 8;
const FONT_SIZE = 13;
const MOST_TICKS = { x: 11, y: 7 };
/** A pointer this near a station, in pixels, reads the station off. */
const STATION_REACH = 8;
/** Distance between readings of the same value at one station, in pixels. */
const READING_STEP = 7;
/** The datasets that are referred to by their place in the list. */
const STOPS = 0;
const READINGS = 2;

/** The stop nearest to the pointer, as an interaction mode of Chart.js. */
const stopMode: InteractionModeFunction = (chart, event) => {
  const { data: elements } = chart.getDatasetMeta(STOPS);
  const data = chart.data.datasets[STOPS]?.data ?? [];
  const stops = elements.map(({ x }, index) => ({ x, isStation: isStation(data[index]) }));
  const index = nearestStop(stops, getRelativePosition(event, chart).x, STATION_REACH);
  const element = elements[index];
  return element === undefined ? [] : [{ element, datasetIndex: STOPS, index }];
};

function isStation(datum: unknown): boolean {
  return typeof datum === "object" && datum !== null && "isStation" in datum && datum.isStation === true;
}

/** Readings of the same value at one station stand beside each other, so that they can be counted. */
const readingsSideBySide: Plugin<"line"> = {
  id: "readingsSideBySide",
  afterDatasetUpdate(_chart, { index, meta }) {
    if (index !== READINGS) return;
    const places = sideBySide(meta.data, READING_STEP);
    meta.data.forEach((element, i) => {
      element.x = places[i]?.x ?? element.x;
    });
  },
};

Chart.register(Filler, LinearScale, LineController, LineElement, PointElement);
Interaction.modes.stop = stopMode;

/** Draws the picture of a profile on a canvas as a chart that can be read off. */
export function drawProfile(canvas: HTMLCanvasElement, first: Shown): DrawnProfile {
  let shown = first;
  const chart = new Chart(canvas, {
    type: "line",
    data: { datasets: datasetsOf(first) },
    options: optionsOf(first),
    plugins: [readingsSideBySide, directLabels(() => shown)],
  });
  const stops = (): readonly Stop[] => chart.data.datasets[STOPS]?.data ?? [];
  const readOff = (at: Shown["at"]): void => {
    const { from, to } = shown.picture.xAxis;
    const index = at === null || at < from || at > to ? -1 : nearestStop(stops(), at);
    chart.setActiveElements(index < 0 ? [] : [{ datasetIndex: STOPS, index }]);
    chart.draw();
  };
  if (first.at !== null) readOff(first.at);
  return {
    readOff,
    show(next) {
      shown = next;
      const datasets = datasetsOf(next);
      chart.data.datasets.forEach((dataset, index) => {
        Object.assign(dataset, datasets[index]);
      });
      chart.options = optionsOf(next);
      chart.update();
      if (next.at !== null) readOff(next.at);
    },
    stopAt(event) {
      const [stop] = chart.getElementsAtEventForMode(event, "stop", {}, false);
      return stop === undefined ? null : (stops()[stop.index]?.x ?? null);
    },
    positionAt: (pixels) => chart.scales.x?.getValueForPixel(pixels) ?? shown.picture.xAxis.from,
    destroy: () => chart.destroy(),
  };
}

function optionsOf({ picture, palette, fonts }: Shown): ChartOptions<"line"> {
  return {
    animation: false,
    // The element over the canvas that is read off with keys hears the pointer, too.
    events: [],
    maintainAspectRatio: false,
    parsing: false,
    normalized: true,
    locale: "en",
    font: { family: fonts, size: FONT_SIZE },
    color: palette.paleInk,
    layout: { padding: { right: MARK } },
    scales: {
      x: axisOf(picture.xAxis, MOST_TICKS.x, palette),
      y: axisOf(picture.yAxis, MOST_TICKS.y, palette),
    },
  };
}

function axisOf({ from, to, label }: Axis, maxTicksLimit: number, { grid, paleInk }: Palette) {
  const font = { size: FONT_SIZE };
  return {
    type: "linear" as const,
    min: from,
    max: to,
    title: { display: true, text: label, color: paleInk, font },
    grid: { color: grid, tickColor: paleInk },
    border: { color: paleInk },
    ticks: {
      color: paleInk,
      font,
      maxTicksLimit,
      maxRotation: 0,
      includeBounds: false,
      format: { useGrouping: false },
    },
  };
}

/** The first is drawn last, on top of the others. There are always as many, some of them empty. */
function datasetsOf({ picture, palette }: Shown): ChartDataset<"line", Point[]>[] {
  const { band, median, afterAdjusting, exceeding, limit, wornZones, workingRange, xAxis, yAxis } = picture;
  const marks = { showLine: false, clip: MARK };
  const line = { pointRadius: 0, clip: 0 };
  const area = { ...line, borderWidth: 0 };
  return [
    {
      ...marks,
      data: stopsAlong(picture),
      pointRadius: 0,
      pointHoverRadius: 5.5,
      pointHoverBorderWidth: 2,
      pointHoverBackgroundColor: palette.ink,
      pointHoverBorderColor: palette.paper,
    },
    {
      ...marks,
      data: [...picture.spots],
      pointStyle: "rectRot",
      pointRadius: 7,
      pointBackgroundColor: palette.ink,
      pointBorderWidth: 0,
    },
    {
      ...marks,
      data: [...picture.readings],
      pointRadius: 4,
      pointBackgroundColor: palette.paper,
      pointBorderColor: palette.ink,
      pointBorderWidth: 1.75,
    },
    {
      ...line,
      data: level(xAxis, limit.y),
      borderColor: palette.limit,
      borderWidth: 2,
      borderDash: [9, 6],
    },
    { ...line, data: [...median.points], borderColor: palette.ink, borderWidth: 2.5 },
    {
      ...line,
      data: [...(afterAdjusting?.points ?? [])],
      borderColor: palette.nut,
      borderWidth: 2.5,
      borderDash: [2, 4],
    },
    {
      ...line,
      data: apart(wornZones.map((zone) => bar(zone, yAxis))),
      borderColor: palette.screw,
      borderWidth: 1.5,
      fill: "start",
      backgroundColor: hatching({ step: 4, colour: palette.screw, ground: palette.screwBody }),
    },
    {
      ...area,
      data: apart(exceeding),
      fill: { value: limit.y },
      backgroundColor: hatching({ step: 8, colour: palette.limit, opacity: 0.7 }),
    },
    { ...area, data: band.map(({ x, high }) => ({ x, y: high })), fill: "+1", backgroundColor: palette.band },
    { ...area, data: band.map(({ x, low }) => ({ x, y: low })) },
    {
      ...area,
      data:
        workingRange === null
          ? []
          : apart([
              level({ from: xAxis.from, to: workingRange.from }, yAxis.to),
              level({ from: workingRange.to, to: xAxis.to }, yAxis.to),
            ]),
      fill: "start",
      backgroundColor: palette.outside,
    },
  ];
}

function level({ from, to }: Interval, y: number): Point[] {
  return [
    { x: from, y },
    { x: to, y },
  ];
}

/** The outline of a bar on the foot of the plot. */
function bar({ from, to }: Interval, { from: foot, to: top }: Interval): Point[] {
  const height = foot + WORN_BAR_SHARE * (top - foot);
  return [{ x: from, y: foot }, ...level({ from, to }, height), { x: to, y: foot }];
}

/** Lines as one, with a gap after each. */
function apart(lines: readonly (readonly Point[])[]): Point[] {
  return lines.flatMap((points) => [...points, { x: points.at(-1)?.x ?? 0, y: Number.NaN }]);
}
