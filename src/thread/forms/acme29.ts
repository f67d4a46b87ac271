import type { ThreadForm } from "../form.ts";
import type { ThreadSize } from "../size.ts";
import { ACME_REMARKS, acmeClearance, acmeLimits } from "./acmeLimits.ts";
import { acmeSizes } from "./acmeSizes.ts";

const diameters = ({ diameter, pitch }: ThreadSize) => ({
  pitch: diameter - pitch / 2,
  screwMajor: diameter,
  screwMinor: diameter - pitch - acmeClearance(pitch),
  nutMajor: diameter + acmeClearance(pitch),
  nutMinor: diameter - pitch,
});

/** Acme thread, 29° included, general purpose: ASME B1.5. */
export const acme29 = {
  name: "acme-29",
  words: "Acme 29°",
  halfAngle: 14.5,
  standard: "ASME B1.5",
  system: "in",
  diameters,
  rounding: null,
  classes: ["2G", "3G", "4G"],
  limits: (size, tolerance) => acmeLimits(size, diameters(size), tolerance),
  remarks: ACME_REMARKS,
  sizes: acmeSizes("Acme"),
  share: 1,
} as const satisfies ThreadForm;
