import { MILLIMETRES_PER_INCH } from "../../inspection/units.ts";
import type { BasicDiameters, Dimensions, Limits } from "../form.ts";
import type { ThreadSize } from "../size.ts";
import { roundedAsPrinted } from "./roundedAsPrinted.ts";

interface AcmeClass {
  /** Allowance on the screw's pitch diameter per √diameter, inches. */
  readonly allowance: number;
  /** Tolerance of the pitch diameter per √diameter, and per √pitch, inches. */
  readonly byDiameter: number;
  readonly byPitch: number;
}

/** ASME B1.5, general purpose classes. */
const CLASSES: Readonly<Record<string, AcmeClass>> = {
  "2G": { allowance: 0.008, byDiameter: 0.006, byPitch: 0.03 },
  "3G": { allowance: 0.006, byDiameter: 0.0028, byPitch: 0.014 },
  "4G": { allowance: 0.004, byDiameter: 0.002, byPitch: 0.01 },
};

/** From so many threads per inch down, clearances are the larger ones. */
const COARSE_PER_INCH = 10;
const CLEARANCE = { coarse: 0.02, fine: 0.01 } as const;
const LEAST_TOLERANCE = 0.005;
const TOLERANCE_PER_PITCH = 0.05;

export const ACME_REMARKS: readonly string[] = [
  "The classes of ASME B1.5 are made for general assembly: on a lead screw they allow far more axial clearance than a slide can use. Cut to the running fit, and take the class only where a drawing asks for it.",
];

/** Clearance on the diameter at crest and root, in millimetres (ASME B1.5 and B1.8). */
export function acmeClearance(pitch: number): number {
  const perInch = MILLIMETRES_PER_INCH / pitch;
  return (perInch <= COARSE_PER_INCH + 1e-9 ? CLEARANCE.coarse : CLEARANCE.fine) * MILLIMETRES_PER_INCH;
}

/**
 * Limits of a class of ASME B1.5, which B1.8 takes over for the stub form, printed to 0.0001 in as the standard prints
 * them: allowance and tolerance are rounded before they are taken off, ties to the even digit. Null for several starts,
 * for which the standard widens its tolerances.
 *
 * @returns in millimetres
 */
export function acmeLimits(size: ThreadSize, basic: BasicDiameters, tolerance: string): Dimensions | null {
  const chosen = CLASSES[tolerance];
  if (chosen === undefined || size.starts !== 1) return null;
  const inches = (millimetres: number): number => millimetres / MILLIMETRES_PER_INCH;
  const printed = (value: number): number => roundedAsPrinted(value, 4);
  const diameter = inches(size.diameter);
  const pitch = inches(size.pitch);
  const clearance = inches(acmeClearance(size.pitch));
  const exact = chosen.byDiameter * Math.sqrt(diameter) + chosen.byPitch * Math.sqrt(pitch);
  const width = printed(exact);
  const crest = printed(Math.max(TOLERANCE_PER_PITCH * pitch, LEAST_TOLERANCE));
  const screwPitch = printed(inches(basic.pitch) - chosen.allowance * Math.sqrt(diameter));
  const nutPitch = printed(inches(basic.pitch));
  const screwMajor = printed(diameter);
  const screwMinor = inches(basic.screwMinor);
  const nutMajor = printed(inches(basic.nutMajor));
  const nutMinor = printed(inches(basic.nutMinor));
  const limits = (max: number, min: number): Limits => ({
    max: printed(max) * MILLIMETRES_PER_INCH,
    min: printed(min) * MILLIMETRES_PER_INCH,
  });
  return {
    screw: {
      major: limits(screwMajor, screwMajor - crest),
      pitch: limits(screwPitch, screwPitch - width),
      minor: limits(screwMinor, screwMinor - 1.5 * exact),
    },
    nut: {
      major: limits(nutMajor + clearance, nutMajor),
      pitch: limits(nutPitch + width, nutPitch),
      minor: limits(nutMinor + crest, nutMinor),
    },
  };
}
