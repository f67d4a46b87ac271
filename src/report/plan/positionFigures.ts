import type { Plan } from "../../intake/plan/measuringPlan.ts";
import { columnFigures } from "../columnFigures.ts";

/** The stations' positions, each with as many decimals as the longest, so that they stand in a column. */
export function positionFigures({ stations }: Plan): readonly string[] {
  return columnFigures(stations.map(({ position }) => position));
}
