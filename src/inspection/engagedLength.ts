import type { Slide } from "./schema.ts";

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
    ? { length: LEADS * screw.lead, assumedAs: "six leads" }
    : { length: DIAMETERS * screw.nominalDiameter, assumedAs: "one and a half nominal diameters" };
}
