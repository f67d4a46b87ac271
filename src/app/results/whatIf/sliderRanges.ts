import type { Assessment } from "../../../analysis/assessment.ts";
import { fromMillimetres, roundTo, type Units } from "../../../inspection/units.ts";

/** A field that a slider goes with, by its place in the slide. */
export type ChangeablePath = "backlashLimit" | "runningClearance" | "nut.takeUpLeft";

/** From where to where a slider goes, in the reader's unit. */
export interface Span {
  readonly from: number;
  readonly to: number;
  readonly step: number;
}

/** What a slider moves by at least: finer figures can be typed. */
const STEPS: Readonly<Record<Units, number>> = { mm: 0.005, in: 0.0002 };
/** Running clearances beyond this are not tried by hand, in millimetres. */
const MOST_CLEARANCE = 0.1;

/** Sliders reach twice what was entered, and as far as the readings make anything of it. */
export function spansOf(
  { settings, greatest, takeUp }: Assessment,
  units: Units,
): Readonly<Record<ChangeablePath, Span>> {
  const step = STEPS[units];
  const upTo = (millimetres: number, from = 0): Span => {
    const steps = Math.ceil(fromMillimetres(millimetres, units) / step);
    return { from, to: roundTo(Math.max(1, steps) * step, 4), step };
  };
  const { limit, runningClearance, takeUpLeft } = settings;
  return {
    backlashLimit: upTo(Math.max(2 * limit, 1.2 * greatest.high), step),
    runningClearance: upTo(Math.max(MOST_CLEARANCE, 2 * runningClearance)),
    "nut.takeUpLeft": upTo(Math.max(1.5 * takeUp.high, Number.isFinite(takeUpLeft) ? 2 * takeUpLeft : 0)),
  };
}
