import type { Box } from "../placeLabels.ts";
import { AXIS_ROOM, type PlotFrame, plotFrame } from "../plotFrame.ts";
import { MARGINS, type Setting, SIDES } from "../setting.ts";
import type { ComparisonPicture } from "./comparisonPicture.ts";

export interface ComparisonFrame {
  readonly width: number;
  readonly height: number;
  readonly profiles: PlotFrame;
  readonly change: PlotFrame;
}

const PROFILES_HEIGHT: Readonly<Record<Setting, number>> = { sheet: 270, wide: 270, narrow: 230 };
const CHANGE_HEIGHT: Readonly<Record<Setting, number>> = { sheet: 170, wide: 170, narrow: 150 };
/** From one plot to the next: the ticks and the label of the one, and the name of the other. */
const BETWEEN = 112;

/** Lays out the drawing of a comparison: the profiles, and under them at the same positions the change. */
export function comparisonFrame(
  { xAxis, yAxis, changeAxis }: ComparisonPicture,
  setting: Setting,
): ComparisonFrame {
  const { width, top } = MARGINS[setting];
  const across = { x: SIDES.left, width: width - SIDES.left - SIDES.right };
  const profiles: Box = { ...across, y: top, height: PROFILES_HEIGHT[setting] };
  const below = profiles.y + profiles.height + BETWEEN;
  const change: Box = { ...across, y: below, height: CHANGE_HEIGHT[setting] };
  return {
    width,
    height: change.y + change.height + AXIS_ROOM,
    profiles: plotFrame(profiles, xAxis, yAxis),
    change: plotFrame(change, xAxis, changeAxis),
  };
}
