import { inRadians, tangent } from "../angles.ts";
import { leadAngle } from "../size.ts";
import type { Groove } from "./groove.ts";
import { wireCentreByContact } from "./wireContact.ts";

/** How a measurement over wires is worked out: by the formula, or from where wire and helicoid touch. */
export type WireRule = "formula" | "contact";

/** Where the formula is off by more than this, contact is solved for: a thousandth of a millimetre. */
const FORMULA_GOOD_TO = 0.001;

/** Steps that any thread's inverse takes far fewer than. */
const MOST_STEPS = 60;
const CLOSE = 1e-10;

/**
 * Measurement over three wires by the formula, in millimetres: M = E + W (1 + 1/sin α) − (P/2) cot α +
 * (W/2) tan²λ cos α cot α, with λ at the pitch diameter.
 */
export function overWiresByFormula(groove: Groove, pitchDiameter: number, wire: number): number {
  const alpha = inRadians(groove.halfAngle);
  const lead = tangent(leadAngle(groove, pitchDiameter));
  const cotangent = 1 / Math.tan(alpha);
  return (
    pitchDiameter +
    wire * (1 + 1 / Math.sin(alpha)) -
    (groove.pitch / 2) * cotangent +
    (wire / 2) * lead ** 2 * Math.cos(alpha) * cotangent
  );
}

/** Measurement over three wires from the contact of wire and helicoid, in millimetres. */
export function overWiresByContact(groove: Groove, pitchDiameter: number, wire: number): number {
  return 2 * wireCentreByContact(groove, pitchDiameter, wire) + wire;
}

/** By how much the formula differs from the contact, in millimetres: more than it is too large. */
export function formulaError(groove: Groove, pitchDiameter: number, wire: number): number {
  return overWiresByFormula(groove, pitchDiameter, wire) - overWiresByContact(groove, pitchDiameter, wire);
}

/** The rule for a thread with its basic pitch diameter: the formula as long as it is good to a thousandth. */
export function ruleFor(groove: Groove, basicPitchDiameter: number, wire: number): WireRule {
  return Math.abs(formulaError(groove, basicPitchDiameter, wire)) <= FORMULA_GOOD_TO ? "formula" : "contact";
}

/** Measurement over wires by the given rule, in millimetres. */
export function overWires(groove: Groove, pitchDiameter: number, wire: number, rule: WireRule): number {
  return rule === "formula"
    ? overWiresByFormula(groove, pitchDiameter, wire)
    : overWiresByContact(groove, pitchDiameter, wire);
}

/**
 * The pitch diameter that a measurement over wires means, in millimetres: the inverse of `overWires`. NaN where no
 * pitch diameter gives that measurement.
 */
export function pitchDiameterFrom(groove: Groove, measured: number, wire: number, rule: WireRule): number {
  const cotangent = 1 / tangent(groove.halfAngle);
  const without = measured - wire * (1 + 1 / Math.sin(inRadians(groove.halfAngle)));
  let diameter = without + (groove.pitch / 2) * cotangent;
  for (let step = 0; step < MOST_STEPS && diameter > 0; step++) {
    const miss = overWires(groove, diameter, wire, rule) - measured;
    diameter -= miss;
    if (Math.abs(miss) < CLOSE) return diameter;
  }
  return Number.NaN;
}
