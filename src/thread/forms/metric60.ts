import type { StandardSize, ThreadForm } from "../form.ts";
import { SIXTY_DEGREE_REMARKS, SIXTY_DEGREE_ROUNDING, sixtyDegreeDiameters } from "./sixtyDegrees.ts";

/** Diameters with their pitches, the coarse one first, millimetres: ISO 262. */
const PLAN: readonly (readonly [diameter: number, pitches: readonly number[]])[] = [
  [3, [0.5]],
  [3.5, [0.6]],
  [4, [0.7]],
  [5, [0.8]],
  [6, [1]],
  [8, [1.25, 1]],
  [10, [1.5, 1.25, 1]],
  [12, [1.75, 1.5, 1.25]],
  [14, [2, 1.5]],
  [16, [2, 1.5]],
  [18, [2.5, 2, 1.5]],
  [20, [2.5, 2, 1.5]],
  [22, [2.5, 2, 1.5]],
  [24, [3, 2]],
  [27, [3, 2]],
  [30, [3.5, 2]],
  [33, [3.5, 2]],
  [36, [4, 3]],
  [39, [4, 3]],
  [42, [4.5, 3]],
  [45, [4.5, 3]],
  [48, [5, 3]],
  [52, [5, 4]],
  [56, [5.5, 4]],
  [60, [5.5, 4]],
  [64, [6, 4]],
];

const sizes: readonly StandardSize[] = PLAN.flatMap(([diameter, pitches]) =>
  pitches.map((pitch, index) => ({
    diameter,
    pitch,
    designation: index === 0 ? `M${diameter}` : `M${diameter} × ${pitch}`,
  })),
);

/** Metric thread, 60° included: profile ISO 68-1, sizes ISO 262. */
export const metric60 = {
  name: "metric-60",
  words: "metric 60°",
  halfAngle: 30,
  standard: "ISO 68-1 and 262",
  system: "mm",
  diameters: sixtyDegreeDiameters,
  rounding: SIXTY_DEGREE_ROUNDING,
  classes: [],
  limits: () => null,
  remarks: SIXTY_DEGREE_REMARKS,
  sizes,
  share: 0.3,
} as const satisfies ThreadForm;
