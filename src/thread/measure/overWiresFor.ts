import { failed, type Outcome, succeeded } from "../../inspection/problem.ts";
import type { Dimensions, Limits, ThreadForm } from "../form.ts";
import type { RunningFit } from "../make/fit.ts";
import type { ThreadSize } from "../size.ts";
import { type Groove, threadThickness } from "./groove.ts";
import { formulaError, overWires, pitchDiameterFrom, ruleFor, type WireRule } from "./overWires.ts";
import { stillToComeOff } from "./wear.ts";
import { chosenWire, grooveOf, isPitchDiameter, type WireRange, wireRange } from "./wires.ts";

/** How the screw is measured over wires. Lengths in millimetres. */
export interface OverWires extends WireRange {
  readonly chosen: number;
  readonly rule: WireRule;
  /** At the pitch diameters of the dimensions: basic, or the limits of the class. */
  readonly overWires: Limits;
  /** The reading for the running fit. */
  readonly fit: { readonly max: number; readonly min: number };
  /** The reading to cut to: for the class where one was asked for, else for the running fit. */
  readonly target: { readonly max: number; readonly min: number };
  /** What the formula gives more than the contact of wire and helicoid. */
  readonly formulaError: number;
}

/** What a reading over wires means. Lengths in millimetres. */
export interface WireReading {
  readonly overWires: number;
  readonly pitchDiameter: number;
  /** Axial thickness of the thread at the basic pitch diameter. */
  readonly thickness: number;
  /** What the reading has still to come down to reach the greatest and the least of the target. */
  readonly toMax: number;
  readonly toMin: number;
  /** The same as infeed on the radius. */
  readonly infeedToMax: number;
  readonly infeedToMin: number;
}

interface Measuring {
  readonly wires: OverWires | null;
  readonly reading: WireReading | null;
  readonly notes: readonly string[];
}

/**
 * Wires for a thread, the reading to cut to, and what a reading means.
 *
 * Where the dimensions have limits they are cut to, else the running fit is.
 */
export function overWiresFor(
  form: ThreadForm,
  size: ThreadSize,
  { screw }: Dimensions,
  fit: RunningFit,
  asked: { readonly wire?: number; readonly overWires?: number },
): Outcome<Measuring> {
  const groove = grooveOf(form, size);
  if (groove === null) return withoutWires(asked);
  const basic = form.diameters(size).pitch;
  const range = wireRange(form, size, groove);
  const wire = chosenWire(range, asked.wire);
  if (!wire.ok) return wire;
  const chosen = wire.value;
  const rule = ruleFor(groove, basic, chosen);
  const at = (diameter: number): number => overWires(groove, diameter, chosen, rule);
  if (fit.screwPitch === null) throw new Error("Only a square thread has no pitch diameter to fit.");
  const { max, min } = limitsOf(screw.pitch) ?? fit.screwPitch;
  const wires: OverWires = {
    ...range,
    chosen,
    rule,
    overWires: { max: mapped(screw.pitch.max, at), min: mapped(screw.pitch.min, at) },
    fit: { max: at(fit.screwPitch.max), min: at(fit.screwPitch.min) },
    target: { max: at(max), min: at(min) },
    formulaError: formulaError(groove, basic, chosen),
  };
  const notes = notesOn(range, chosen);
  if (asked.overWires === undefined) return succeeded({ wires, reading: null, notes });
  const reading = readingOf(form, size, groove, asked.overWires, wires, { max, min });
  return reading.ok ? succeeded({ wires, reading: reading.value, notes }) : reading;
}

function withoutWires(asked: { readonly wire?: number; readonly overWires?: number }): Outcome<Measuring> {
  const given = asked.wire !== undefined ? "wire" : asked.overWires !== undefined ? "over-wires" : null;
  return given === null
    ? succeeded({ wires: null, reading: null, notes: [] })
    : failed(
        given,
        "a square thread has no measurement over wires",
        "Measure the thickness of its thread with a gear-tooth calliper or gauge blocks instead.",
      );
}

function readingOf(
  form: ThreadForm,
  size: ThreadSize,
  groove: Groove,
  measured: number,
  { chosen, rule }: OverWires,
  target: { readonly max: number; readonly min: number },
): Outcome<WireReading> {
  const pitchDiameter = pitchDiameterFrom(groove, measured, chosen, rule);
  if (!isPitchDiameter(form, size, pitchDiameter))
    return failed(
      "over-wires",
      "it would put the pitch line outside of the thread",
      "Check the reading, its unit and the diameter of the wires.",
    );
  const toMax = stillToComeOff(groove, measured, target.max, chosen, rule);
  const toMin = stillToComeOff(groove, measured, target.min, chosen, rule);
  return succeeded({
    overWires: measured,
    pitchDiameter,
    thickness: threadThickness(groove, form.diameters(size).pitch, pitchDiameter),
    toMax,
    toMin,
    infeedToMax: (pitchDiameter - target.max) / 2,
    infeedToMin: (pitchDiameter - target.min) / 2,
  });
}

function notesOn({ best, least }: WireRange, chosen: number): readonly string[] {
  return best < least && chosen === least
    ? [
        "The wire that touches at the pitch line would rest on the root of this shallow thread: the least wire that clears it is taken.",
      ]
    : [];
}

function limitsOf({ max, min }: Limits): { readonly max: number; readonly min: number } | null {
  return max === null || min === null ? null : { max, min };
}

function mapped(value: number | null, by: (value: number) => number): number | null {
  return value === null ? null : by(value);
}
