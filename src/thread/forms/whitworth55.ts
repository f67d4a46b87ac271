import type { ThreadForm } from "../form.ts";
import { inchSizes } from "./acmeSizes.ts";

/** In pitches, BS 84: the thread's depth, the radius of crest and root. */
const DEPTH = 0.640327;
const RADIUS = 0.137329;
const HALF_ANGLE = 27.5;
/** The arc of a crest leaves the flank this far below the crest, in radii: 1 − sin 27.5°. */
const ARC_HEIGHT = 1 - Math.sin((HALF_ANGLE * Math.PI) / 180);

/** Diameters in inches with threads per inch, BS 84. */
const COARSE: readonly (readonly [number, number])[] = [
  [1 / 4, 20],
  [5 / 16, 18],
  [3 / 8, 16],
  [7 / 16, 14],
  [1 / 2, 12],
  [9 / 16, 12],
  [5 / 8, 11],
  [3 / 4, 10],
  [7 / 8, 9],
  [1, 8],
  [1 + 1 / 8, 7],
  [1 + 1 / 4, 7],
  [1 + 1 / 2, 6],
  [1 + 3 / 4, 5],
  [2, 4.5],
  [2 + 1 / 4, 4],
  [2 + 1 / 2, 4],
  [2 + 3 / 4, 3.5],
  [3, 3.5],
  [3 + 1 / 4, 3.25],
  [3 + 1 / 2, 3.25],
  [4, 3],
];
const FINE: readonly (readonly [number, number])[] = [
  [1 / 4, 26],
  [5 / 16, 22],
  [3 / 8, 20],
  [7 / 16, 18],
  [1 / 2, 16],
  [9 / 16, 16],
  [5 / 8, 14],
  [3 / 4, 12],
  [7 / 8, 11],
  [1, 10],
  [1 + 1 / 8, 9],
  [1 + 1 / 4, 9],
  [1 + 3 / 8, 8],
  [1 + 1 / 2, 8],
  [1 + 3 / 4, 7],
  [2, 7],
];

/** Whitworth thread, 55° included, crests and roots rounded: BS 84. */
export const whitworth55 = {
  name: "whitworth-55",
  words: "Whitworth 55°",
  halfAngle: HALF_ANGLE,
  standard: "BS 84",
  system: "in",
  diameters: ({ diameter, pitch }) => ({
    pitch: diameter - DEPTH * pitch,
    screwMajor: diameter,
    screwMinor: diameter - 2 * DEPTH * pitch,
    nutMajor: diameter,
    nutMinor: diameter - 2 * DEPTH * pitch,
  }),
  rounding: {
    rootRadius: (pitch: number) => RADIUS * pitch,
    nutRootRadius: (pitch: number) => RADIUS * pitch,
    crestDepth: (pitch: number) => RADIUS * ARC_HEIGHT * pitch,
  },
  classes: [],
  limits: () => null,
  remarks: ["Basic sizes of BS 84; limits of fastening threads do not apply to a screw that moves a slide."],
  sizes: [...inchSizes(COARSE, "BSW"), ...inchSizes(FINE, "BSF")],
  share: 0.2,
} as const satisfies ThreadForm;
