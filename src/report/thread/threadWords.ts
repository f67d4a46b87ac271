import type { Lengths } from "../../inspection/lengths.ts";
import { fromMillimetres, MILLIMETRES_PER_INCH, roundTo, type Units } from "../../inspection/units.ts";
import type { ThreadForm } from "../../thread/form.ts";
import type { ThreadSize } from "../../thread/size.ts";
import { HOLDS_LOAD, ISOLATE, MAKER_FIRST } from "../cautions.ts";
import { capitalised } from "../words.ts";

/** An angle in degrees: `14.50°`. */
export function degrees(angle: number): string {
  return `${(roundTo(angle, 2) || 0).toFixed(2)}°`;
}

/** Two sizes with their unit, the greater first: `21.407 to 21.313 mm`; one where they read the same. */
export function between(lengths: Lengths, max: number, min: number): string {
  return lengths.figure(max) === lengths.figure(min)
    ? lengths.lostMotion(max)
    : `${lengths.figure(max)} to ${lengths.lostMotion(min)}`;
}

/** Pitch with threads per inch where that is a plain number: `5.08 mm (5 per inch)`. */
export function pitchWords(pitch: number, units: Units): string {
  const perInch = MILLIMETRES_PER_INCH / pitch;
  const plain = Math.abs(perInch * 4 - Math.round(perInch * 4)) < 1e-6;
  const length = `${roundTo(fromMillimetres(pitch, units), units === "in" ? 5 : 4)} ${units}`;
  return plain ? `${length} (${roundTo(perInch, 2)} per inch)` : length;
}

/** A thread by its standard's name, else by form, diameter and pitch. */
export function threadTitle(
  form: ThreadForm,
  size: ThreadSize,
  designation: string | null,
  units: Units,
): string {
  const { diameter, pitch, starts, hand } = size;
  const name =
    designation ??
    `${form.words}, ${roundTo(fromMillimetres(diameter, units), units === "in" ? 4 : 3)} ${units} × ${pitchWords(pitch, units)}`;
  return [capitalised(name), startsWords(starts), `${hand} hand`].join(", ");
}

/** Which edge of an upright tool leads: the groove below it, cut before, leans away from that side. */
export function leadingEdge({ hand }: Pick<ThreadSize, "hand">): string {
  return hand === "right"
    ? "the one towards the headstock, for a right-hand thread"
    : "the one away from the headstock, for a left-hand thread";
}

export function startsWords(starts: number): string {
  return starts === 1 ? "single start" : `${starts} starts`;
}

/** What to mind when a thread is cut and its tool is ground. */
export function threadCautions(holdsLoad: boolean): readonly string[] {
  return [
    ...(holdsLoad ? [HOLDS_LOAD] : []),
    ISOLATE,
    "Guard chuck, work and wheel and protect your eyes; keep hands, sleeves and rags away from a thread while it turns. Support a long screw: it can whip.",
    "A new nut can seize on a new screw: run the whole travel by hand before power.",
    MAKER_FIRST,
  ];
}
