import type { StandardSize, ThreadForm } from "../form.ts";

/** Crest clearance by pitch, in millimetres, ISO 2901. Pitches between the standard ones take that of the step below. */
const CREST_CLEARANCES = [
  { from: 14, clearance: 1 },
  { from: 6, clearance: 0.5 },
  { from: 2, clearance: 0.25 },
] as const;
const FINEST_CLEARANCE = 0.15;
/** No clearance takes more than this share of a pitch finer than any standard one. */
const GREATEST_SHARE = 0.1;

/** Clearance at crest and root on one side, in millimetres, for a pitch in millimetres (ISO 2901). */
export function crestClearance(pitch: number): number {
  const step = CREST_CLEARANCES.find(({ from }) => pitch >= from - 1e-9);
  return step?.clearance ?? Math.min(FINEST_CLEARANCE, GREATEST_SHARE * pitch);
}

/** Diameters with their pitches, millimetres, ISO 2902. */
const PLAN: readonly (readonly [diameters: readonly number[], pitches: readonly number[]])[] = [
  [[8], [1.5]],
  [
    [9, 10],
    [1.5, 2],
  ],
  [[11], [2, 3]],
  [
    [12, 14],
    [2, 3],
  ],
  [
    [16, 18, 20],
    [2, 4],
  ],
  [
    [22, 24, 26, 28],
    [3, 5, 8],
  ],
  [
    [30, 32, 34, 36],
    [3, 6, 10],
  ],
  [
    [38, 40, 42],
    [3, 7, 10],
  ],
  [[44], [3, 7, 12]],
  [
    [46, 48, 50, 52],
    [3, 8, 12],
  ],
  [
    [55, 60],
    [3, 9, 14],
  ],
  [
    [65, 70, 75, 80],
    [4, 10, 16],
  ],
  [
    [85, 90, 95],
    [4, 12, 18],
  ],
  [
    [100, 110],
    [4, 12, 20],
  ],
  [
    [120, 130],
    [6, 14, 22],
  ],
  [[140], [6, 14, 24]],
  [[150], [6, 16, 24]],
  [
    [160, 170],
    [6, 16, 28],
  ],
  [[180], [8, 18, 28]],
  [
    [190, 200],
    [8, 18, 32],
  ],
  [
    [210, 220, 230],
    [8, 20, 36],
  ],
  [[240], [8, 22, 36]],
  [
    [250, 260],
    [12, 22, 40],
  ],
  [
    [270, 280],
    [12, 24, 40],
  ],
  [
    [290, 300],
    [12, 24, 44],
  ],
];

const sizes: readonly StandardSize[] = PLAN.flatMap(([diameters, pitches]) =>
  diameters.flatMap((diameter) =>
    pitches.map((pitch) => ({ diameter, pitch, designation: `Tr ${diameter} × ${pitch}` })),
  ),
);

/** Metric trapezoidal thread, 30° included: profile ISO 2901, sizes ISO 2902, dimensions ISO 2904. */
export const trapezoidal30 = {
  name: "trapezoidal-30",
  words: "trapezoidal 30°",
  halfAngle: 15,
  standard: "ISO 2901, 2902 and 2904",
  system: "mm",
  diameters: ({ diameter, pitch }) => {
    const clearance = 2 * crestClearance(pitch);
    return {
      pitch: diameter - pitch / 2,
      screwMajor: diameter,
      screwMinor: diameter - pitch - clearance,
      nutMajor: diameter + clearance,
      nutMinor: diameter - pitch,
    };
  },
  rounding: null,
  classes: [],
  limits: () => null,
  remarks: [
    "ISO 2903 says itself that its tolerances are not for lead screws: the limits come from the running fit.",
  ],
  sizes,
  share: 1,
} as const satisfies ThreadForm;
