import type { Units } from "../inspection/units.ts";
import type { ThreadSize } from "./size.ts";

/** A size with its limits, in millimetres. Of a screw `max` is the basic or greatest size, of a nut `min`. */
export interface Limits {
  readonly max: number | null;
  readonly min: number | null;
}

export interface PartSizes {
  readonly major: Limits;
  readonly pitch: Limits;
  readonly minor: Limits;
}

/** Diameters of a screw and of its nut. */
export interface Dimensions {
  readonly screw: PartSizes;
  readonly nut: PartSizes;
}

/** The diameters of the basic form, in millimetres, clearances at crest and root included. */
export interface BasicDiameters {
  /** Of screw and nut alike. */
  readonly pitch: number;
  readonly screwMajor: number;
  readonly screwMinor: number;
  readonly nutMajor: number;
  readonly nutMinor: number;
}

/** A size that a standard lists, in millimetres. */
export interface StandardSize {
  readonly diameter: number;
  readonly pitch: number;
  /** As it is written on a drawing: `Tr 24 × 5`, `1-5 Acme`. */
  readonly designation: string;
}

/** Roundings of a form without flats, in millimetres for a pitch in millimetres. */
export interface Rounding {
  /** Radius at the root of the screw. */
  readonly rootRadius: (pitch: number) => number;
  /** Radius at the root of the nut; null where that is flat. */
  readonly nutRootRadius: ((pitch: number) => number) | null;
  /** How far below the crest of the screw its straight flank begins. */
  readonly crestDepth: (pitch: number) => number;
}

/** A thread form: everything that the program knows of it. A new one is a file and a line in `forms/index.ts`. */
export interface ThreadForm {
  readonly name: string;
  readonly words: string;
  /** Half the included angle of the thread, in degrees. */
  readonly halfAngle: number;
  /** The standard that its sizes are taken from; null where there is none. */
  readonly standard: string | null;
  /** The unit that its standard sizes are made in. */
  readonly system: Units;
  readonly diameters: (size: ThreadSize) => BasicDiameters;
  /** Null where crests and roots are flat. */
  readonly rounding: Rounding | null;
  /** Tolerance classes whose limits are known, the coarsest first. */
  readonly classes: readonly string[];
  /** Limits of a class in `classes`; null where the class has none for this size. */
  readonly limits: (size: ThreadSize, tolerance: string) => Dimensions | null;
  /** What has to be said of limits, in sentences. */
  readonly remarks: readonly string[];
  readonly sizes: readonly StandardSize[];
  /** How often the trade meets the form on lead screws, against the others: what identification begins with. */
  readonly share: number;
}

/** The basic sizes as limits: one end of each, the other not given. */
export function basicDimensions(form: ThreadForm, size: ThreadSize): Dimensions {
  const { pitch, screwMajor, screwMinor, nutMajor, nutMinor } = form.diameters(size);
  const upTo = (max: number): Limits => ({ max, min: null });
  const from = (min: number): Limits => ({ max: null, min });
  return {
    screw: { major: upTo(screwMajor), pitch: upTo(pitch), minor: upTo(screwMinor) },
    nut: { major: from(nutMajor), pitch: from(pitch), minor: from(nutMinor) },
  };
}
