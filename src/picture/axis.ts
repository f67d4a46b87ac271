import { roundTo } from "../inspection/units.ts";

/** A tick at a value, in the reader's unit. */
export interface Tick {
  readonly at: number;
  readonly label: string;
}

/** An axis in the reader's unit, with ticks at round numbers. */
export interface Axis {
  readonly label: string;
  readonly from: number;
  readonly to: number;
  readonly ticks: readonly Tick[];
}

/** The step of 1, 2 or 5 times a power of ten that divides the span into about the given number of parts. */
export function roundStep(span: number, parts: number): number {
  const rough = span / parts;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 5, 10].find((factor) => factor * power >= rough * (1 - 1e-9)) ?? 10;
  return step * power;
}

/** An axis with exact ends, for positions; its ticks are at round numbers. */
export function exactAxis(label: string, from: number, to: number, parts: number): Axis {
  return axis(label, from, to, roundStep(to - from, parts));
}

/** An axis widened to the next tick at either end, for quantities; it always includes zero. */
export function wideAxis(label: string, least: number, greatest: number, parts: number): Axis {
  const from = Math.min(0, least);
  const to = Math.max(0, greatest);
  const step = roundStep(to - from, parts);
  return axis(label, Math.floor(from / step) * step, Math.ceil(to / step - 1e-9) * step, step);
}

/** Greatest width of a letter of a tick label, and least gap between two labels, in pixels. */
const LETTER = 8;
const GAP = 10;

/** The axis with every nth tick, so that the labels fit on a line of this length in pixels. */
export function withRoomFor({ ticks, ...axis }: Axis, pixels: number): Axis {
  const widest = Math.max(...ticks.map(({ label }) => label.length)) * LETTER + GAP;
  const apart = ticks.slice(1).map(({ at }, index) => at - (ticks[index]?.at ?? at));
  const closest = (Math.min(...apart) / (axis.to - axis.from)) * pixels;
  const every = Math.max(1, Math.ceil(widest / closest));
  return { ...axis, ticks: ticks.filter((_, index) => index % every === 0) };
}

function axis(label: string, from: number, to: number, step: number): Axis {
  const decimals = Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
  const ticks: Tick[] = [];
  for (let count = Math.ceil(from / step - 1e-9); count * step <= to + step * 1e-9; count++) {
    const at = roundTo(count * step, decimals);
    ticks.push({ at, label: at.toFixed(decimals) });
  }
  return { label, from: roundTo(from, 9), to: roundTo(to, 9), ticks };
}
