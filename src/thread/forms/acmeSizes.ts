import { MILLIMETRES_PER_INCH } from "../../inspection/units.ts";
import type { StandardSize } from "../form.ts";
import { inchWords } from "./inchWords.ts";

/** Diameters in inches with threads per inch: the preferred series of ASME B1.5 and B1.8. */
const SERIES: readonly (readonly [diameter: number, perInch: number])[] = [
  [1 / 4, 16],
  [5 / 16, 14],
  [3 / 8, 12],
  [7 / 16, 12],
  [1 / 2, 10],
  [5 / 8, 8],
  [3 / 4, 6],
  [7 / 8, 6],
  [1, 5],
  [1 + 1 / 8, 5],
  [1 + 1 / 4, 5],
  [1 + 3 / 8, 4],
  [1 + 1 / 2, 4],
  [1 + 3 / 4, 4],
  [2, 4],
  [2 + 1 / 4, 3],
  [2 + 1 / 2, 3],
  [2 + 3 / 4, 3],
  [3, 2],
  [3 + 1 / 2, 2],
  [4, 2],
  [4 + 1 / 2, 2],
  [5, 2],
];

/** The preferred series under the name of a form: `1-5 Acme`. */
export function acmeSizes(name: string): readonly StandardSize[] {
  return inchSizes(SERIES, name);
}

/** Sizes given in inches and threads per inch. */
export function inchSizes(
  series: readonly (readonly [diameter: number, perInch: number])[],
  name: string,
): readonly StandardSize[] {
  return series.map(([diameter, perInch]) => ({
    diameter: diameter * MILLIMETRES_PER_INCH,
    pitch: MILLIMETRES_PER_INCH / perInch,
    designation: `${inchWords(diameter)}-${perInch} ${name}`,
  }));
}
