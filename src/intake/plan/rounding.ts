import { roundTo } from "../../inspection/units.ts";

const STEPS = [5, 2, 1];

/** What brings a figure to the nearest step of 1, 2 or 5 in some decimal place, the largest within the given one. */
export function rounding(greatest: number): (figure: number) => number {
  const power = Math.floor(Math.log10(greatest) + 1e-9);
  const step = (STEPS.find((each) => each <= greatest / 10 ** power + 1e-9) ?? 1) * 10 ** power;
  const decimals = Math.max(0, -power);
  return (figure) => roundTo(Math.round(figure / step) * step, decimals);
}
