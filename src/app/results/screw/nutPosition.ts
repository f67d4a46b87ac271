import { roundTo } from "../../../inspection/units.ts";
import { roundStep } from "../../../picture/axis.ts";

/** The way that a nut can go, in the reader's unit: as far as the slide travels. */
export interface Way {
  readonly from: number;
  readonly to: number;
  /** What an arrow key moves it by. */
  readonly step: number;
}

/** An arrow key goes about a three-hundredth of the way, Page Up and Page Down about a twentieth. */
const STEPS = 300;
const STEPS_OF_A_PAGE = 20;

export function wayBetween(from: number, to: number): Way {
  return { from, to, step: roundStep(to - from, STEPS) };
}

/** The nearest place to the wished one that is on the way and a whole number of steps from zero, or an end of it. */
export function placedOn({ from, to, step }: Way, wished: number): number {
  if (wished <= from) return from;
  if (wished >= to) return to;
  const near = roundTo(Math.round(wished / step) * step, 6);
  return Math.min(to, Math.max(from, near));
}

/** Where a key moves the nut to, as a slider's keys do; null for a key that does not move it. */
export function keyedTo(key: string, at: number, way: Way): number | null {
  const page = roundStep(way.to - way.from, STEPS_OF_A_PAGE);
  switch (key) {
    case "ArrowRight":
    case "ArrowUp":
      return placedOn(way, at + way.step);
    case "ArrowLeft":
    case "ArrowDown":
      return placedOn(way, at - way.step);
    case "PageUp":
      return placedOn(way, at + page);
    case "PageDown":
      return placedOn(way, at - page);
    case "Home":
      return way.from;
    case "End":
      return way.to;
    default:
      return null;
  }
}
