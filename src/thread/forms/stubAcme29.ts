import type { ThreadForm } from "../form.ts";
import type { ThreadSize } from "../size.ts";
import { ACME_REMARKS, acmeClearance, acmeLimits } from "./acmeLimits.ts";
import { acmeSizes } from "./acmeSizes.ts";

/** Basic height of the thread, in pitches. */
const HEIGHT = 0.3;

const diameters = ({ diameter, pitch }: ThreadSize) => ({
  pitch: diameter - HEIGHT * pitch,
  screwMajor: diameter,
  screwMinor: diameter - 2 * HEIGHT * pitch - acmeClearance(pitch),
  nutMajor: diameter + acmeClearance(pitch),
  nutMinor: diameter - 2 * HEIGHT * pitch,
});

/** Stub Acme thread, 29° included, basic height 0.3 pitch: ASME B1.8. */
export const stubAcme29 = {
  name: "stub-acme-29",
  words: "stub Acme 29°",
  halfAngle: 14.5,
  standard: "ASME B1.8",
  system: "in",
  diameters,
  rounding: null,
  classes: ["2G"],
  limits: (size, tolerance) => acmeLimits(size, diameters(size), tolerance),
  remarks: ACME_REMARKS,
  sizes: acmeSizes("Stub Acme"),
  share: 0.1,
} as const satisfies ThreadForm;
