import type { Units } from "../../inspection/units.ts";
import type { ThreadWear } from "../../thread/measure/wear.ts";
import type { Replacement } from "../../thread/replacement.ts";

/** A replacement thread with what was said and assumed about it, as words, JSON, drawing and slip tell it. */
export interface ThreadSaid {
  readonly thread: Replacement;
  /** The unit to write in. */
  readonly units: Units;
  /** The screw measured at several places; null where it was not. Positions and thicknesses in millimetres. */
  readonly wear: ThreadWear | null;
  /** Of the machine and the parts, as far as it was said. */
  readonly slide: string | null;
  readonly length: number | null;
  readonly material: string | null;
  readonly holdsLoad: boolean;
  /** What defaults decided of thread and cutting, in sentences. */
  readonly assumed: readonly string[];
  /** What they decided of making the tools. */
  readonly assumedOfTools: readonly string[];
}
