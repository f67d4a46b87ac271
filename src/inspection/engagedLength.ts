import type { Slide } from "./schema.ts";
import { roundTo } from "./units.ts";

/** What a slide that does not say how much of the screw its nut engages is taken to have. */
const DIAMETERS = 1.5;
const LEADS = 6;

export interface EngagedLength {
  /** In the slide's units. */
  readonly length: number;
  /** What it was worked out from, in words; undefined where the slide states it. */
  readonly assumedAs?: string;
}

/** The length of screw that the nut engages: as stated, else by the nominal diameter, else by the lead. */
export function engagedLengthOf({ screw, nut }: Pick<Slide, "screw" | "nut">): EngagedLength {
  if (nut?.engagedLength !== undefined) return { length: nut.engagedLength };
  return screw.nominalDiameter === undefined
    ? { length: plain(LEADS * screw.lead), assumedAs: "six leads" }
    : { length: plain(DIAMETERS * screw.nominalDiameter), assumedAs: "one and a half nominal diameters" };
}

/** Without the traces of binary fractions, such as six times 0.1 leaves. */
function plain(length: number): number {
  return roundTo(length, 9);
}
