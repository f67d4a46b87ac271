import type { Kind } from "./kind.ts";
import { bothEnds } from "./of/bothEnds.ts";
import { flanksApart } from "./of/flanksApart.ts";
import { habitualStrokes } from "./of/habitualStrokes.ts";
import { leadError } from "./of/leadError.ts";
import { longNut, longTravel } from "./of/lengths.ts";
import { nearlyEven } from "./of/nearlyEven.ts";
import { scored } from "./of/scored.ts";
import { smoothRandom } from "./of/smoothRandom.ts";
import { steps } from "./of/steps.ts";
import { turnedEndForEnd } from "./of/turnedEndForEnd.ts";
import { unwornEnd } from "./of/unwornEnd.ts";

/** Every kind of wear that the model may be developed against. Those held out are in a folder of their own. */
export const KINDS: readonly Kind[] = [
  habitualStrokes,
  flanksApart,
  bothEnds,
  steps,
  turnedEndForEnd,
  smoothRandom,
  scored,
  leadError,
  nearlyEven,
  unwornEnd,
  longTravel,
  longNut,
];
