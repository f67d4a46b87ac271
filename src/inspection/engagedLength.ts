import type { Slide } from "./schema.ts";
import { roundTo } from "./units.ts";

/** Assumed engaged length, in nominal diameters, or in leads if the diameter is unknown. */
const DIAMETERS = 1.5;
const LEADS = 6;

/** The engaged length of a nut, stated or assumed. */
export interface EngagedLength {
  /** In the slide's units. */
  readonly length: number;
  /** How it was assumed, in words; undefined if the slide states it. */
  readonly assumedAs?: string;
}

/** The length of screw that the nut engages: as stated, else from the nominal diameter, else from the lead. */
export function engagedLengthOf({ screw, nut }: Pick<Slide, "screw" | "nut">): EngagedLength {
  if (nut?.engagedLength !== undefined) return { length: nut.engagedLength };
  return screw.nominalDiameter === undefined
    ? { length: rounded(LEADS * screw.lead), assumedAs: "six leads" }
    : { length: rounded(DIAMETERS * screw.nominalDiameter), assumedAs: "one and a half nominal diameters" };
}

/** Without floating-point error, such as that of six times 0.1. */
function rounded(length: number): number {
  return roundTo(length, 9);
}
