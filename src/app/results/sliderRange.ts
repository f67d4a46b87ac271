import { roundTo } from "../../inspection/units.ts";
import { roundStep } from "../../picture/axis.ts";

/** The range of a slider, in the reader's unit. */
export interface SliderRange {
  readonly from: number;
  readonly to: number;
  /** What an arrow key moves the slider by. */
  readonly step: number;
}

/** An arrow key moves by about a three-hundredth of the range, Page Up and Page Down by about a twentieth. */
const STEPS = 300;
const STEPS_OF_A_PAGE = 20;

/** The range of positions from one to another, with a round step. */
export function positionRange(from: number, to: number): SliderRange {
  return { from, to, step: roundStep(to - from, STEPS) };
}

/** The nearest position to the wanted one that is a whole number of steps from zero, or an end of the range. */
export function snapped({ from, to, step }: SliderRange, wanted: number): number {
  if (wanted <= from) return from;
  if (wanted >= to) return to;
  const near = roundTo(Math.round(wanted / step) * step, 6);
  return Math.min(to, Math.max(from, near));
}

/** Where a key moves a slider; null for a key that does not move it. */
export function keyMove(key: string, at: number, range: SliderRange): number | null {
  const page = roundStep(range.to - range.from, STEPS_OF_A_PAGE);
  switch (key) {
    case "ArrowRight":
    case "ArrowUp":
      return snapped(range, at + range.step);
    case "ArrowLeft":
    case "ArrowDown":
      return snapped(range, at - range.step);
    case "PageUp":
      return snapped(range, at + page);
    case "PageDown":
      return snapped(range, at - page);
    case "Home":
      return range.from;
    case "End":
      return range.to;
    default:
      return null;
  }
}
