import type { Plan } from "../../intake/plan/measuringPlan.ts";

/** The stations' positions, each with as many decimals as the longest, so that they stand in a column. */
export function positionFigures({ stations }: Plan): readonly string[] {
  const decimals = stations.map(({ position }) => (String(position).split(".")[1] ?? "").length);
  return stations.map(({ position }) => position.toFixed(Math.max(...decimals)));
}
