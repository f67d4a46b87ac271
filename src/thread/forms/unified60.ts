import type { ThreadForm } from "../form.ts";
import { inchSizes } from "./acmeSizes.ts";
import { SIXTY_DEGREE_REMARKS, SIXTY_DEGREE_ROUNDING, sixtyDegreeDiameters } from "./sixtyDegrees.ts";

/** Diameters in inches with threads per inch, ASME B1.1. */
const COARSE: readonly (readonly [number, number])[] = [
  [1 / 4, 20],
  [5 / 16, 18],
  [3 / 8, 16],
  [7 / 16, 14],
  [1 / 2, 13],
  [9 / 16, 12],
  [5 / 8, 11],
  [3 / 4, 10],
  [7 / 8, 9],
  [1, 8],
  [1 + 1 / 8, 7],
  [1 + 1 / 4, 7],
  [1 + 3 / 8, 6],
  [1 + 1 / 2, 6],
  [1 + 3 / 4, 5],
  [2, 4.5],
  [2 + 1 / 4, 4.5],
  [2 + 1 / 2, 4],
  [2 + 3 / 4, 4],
  [3, 4],
  [3 + 1 / 4, 4],
  [3 + 1 / 2, 4],
  [3 + 3 / 4, 4],
  [4, 4],
];
const FINE: readonly (readonly [number, number])[] = [
  [1 / 4, 28],
  [5 / 16, 24],
  [3 / 8, 24],
  [7 / 16, 20],
  [1 / 2, 20],
  [9 / 16, 18],
  [5 / 8, 18],
  [3 / 4, 16],
  [7 / 8, 14],
  [1, 12],
  [1 + 1 / 8, 12],
  [1 + 1 / 4, 12],
  [1 + 3 / 8, 12],
  [1 + 1 / 2, 12],
];

/** Unified inch thread, 60° included: ASME B1.1, on the profile of ISO 68-1. */
export const unified60 = {
  name: "unified-60",
  words: "unified 60°",
  halfAngle: 30,
  standard: "ASME B1.1 and ISO 68-1",
  system: "in",
  diameters: sixtyDegreeDiameters,
  rounding: SIXTY_DEGREE_ROUNDING,
  classes: [],
  limits: () => null,
  remarks: SIXTY_DEGREE_REMARKS,
  sizes: [...inchSizes(COARSE, "UNC"), ...inchSizes(FINE, "UNF")],
  share: 0.3,
} as const satisfies ThreadForm;
