import { fromMillimetres, roundTo, type Units } from "../../inspection/units.ts";
import type { Limits, PartSizes } from "../../thread/form.ts";
import type { Tap } from "../../thread/make/tap.ts";
import type { Tool } from "../../thread/make/tool.ts";
import type { OverWires, WireReading } from "../../thread/measure/overWiresFor.ts";
import type { PlaceWear, ThreadWear } from "../../thread/measure/wear.ts";
import type { GrindingSetUp, Replacement } from "../../thread/replacement.ts";
import type { ThreadSaid } from "./threadSaid.ts";
import { threadCautions } from "./threadWords.ts";

/** Finer than anything that is measured: a hundredth of a micrometre, a millionth of an inch. */
const DECIMALS: Readonly<Record<Units, number>> = { mm: 5, in: 6 };
const ANGLE_DECIMALS = 5;

/** Writes lengths given in millimetres in the reader's unit. */
export type InUnits = (millimetres: number) => number;

export function inUnits(units: Units): InUnits {
  return (millimetres) => roundTo(fromMillimetres(millimetres, units), DECIMALS[units]);
}

const angle = (value: number): number => roundTo(value, ANGLE_DECIMALS);

/** A replacement thread as the object that `tightspot thread --json` writes; lengths in the reader's unit. */
export function threadResult({ thread, units, wear, holdsLoad, assumed, assumedOfTools }: ThreadSaid) {
  const to = inUnits(units);
  const { form, size, lead, designation, tolerance, dimensions, fit, leadAngle } = thread;
  const clearance = ({ from, to: most }: { readonly from: number; readonly to: number }) => ({
    from: to(from),
    to: to(most),
  });
  const limits = (value: Limits): Limits => ({
    max: value.max === null ? null : to(value.max),
    min: value.min === null ? null : to(value.min),
  });
  const part = ({ major, pitch, minor }: PartSizes) => ({
    major: limits(major),
    pitch: limits(pitch),
    minor: limits(minor),
  });
  return {
    form: form.name,
    units,
    diameter: to(size.diameter),
    pitch: to(size.pitch),
    starts: size.starts,
    hand: size.hand,
    lead: to(lead),
    designation,
    class: tolerance,
    fit: {
      clearance: clearance(fit.clearance),
      screwPitch: fit.screwPitch && limits(fit.screwPitch),
      nutPitch: to(fit.nutPitch),
      thickness: limits(fit.thickness),
      tool: toolResult(thread.fitTool, to),
    },
    screw: part(dimensions.screw),
    nut: part(dimensions.nut),
    clearanceOfClass: thread.clearanceOfClass && clearance(thread.clearanceOfClass),
    leadAngle: {
      major: angle(leadAngle.major),
      pitch: angle(leadAngle.pitch),
      minor: angle(leadAngle.minor),
    },
    wires: thread.wires && wiresResult(thread.wires, to, limits),
    reading: thread.reading && readingResult(thread.reading, to),
    tool: toolResult(thread.tool, to),
    nutTool: toolResult(thread.nutTool, to),
    grinding: thread.grinding.map((each) => grindingResult(each, to)),
    tap: tapResult(thread.tap, to),
    passes: passesResult(thread, to),
    wear: wear && wearResult(wear, to),
    notes: thread.notes,
    cautions: threadCautions(holdsLoad),
    assumed: [...assumed, ...assumedOfTools],
  };
}

function wiresResult(wires: OverWires, to: InUnits, limits: (value: Limits) => Limits) {
  return {
    best: to(wires.best),
    least: to(wires.least),
    largest: to(wires.largest),
    chosen: to(wires.chosen),
    overWires: limits(wires.overWires),
    fit: limits(wires.fit),
    target: limits(wires.target),
    rule: wires.rule,
    formulaError: to(wires.formulaError),
  };
}

function readingResult(reading: WireReading, to: InUnits) {
  return {
    overWires: to(reading.overWires),
    pitchDiameter: to(reading.pitchDiameter),
    thickness: to(reading.thickness),
    toMax: to(reading.toMax),
    toMin: to(reading.toMin),
    infeedToMax: to(reading.infeedToMax),
    infeedToMin: to(reading.infeedToMin),
  };
}

function toolResult({ tipWidth, tipRadius, depth, leadingClearance, trailingClearance }: Tool, to: InUnits) {
  return {
    tipWidth: tipWidth === null ? null : to(tipWidth),
    tipRadius: tipRadius === null ? null : to(tipRadius),
    depth: to(depth),
    leadingClearance: angle(leadingClearance),
    trailingClearance: angle(trailingClearance),
  };
}

function grindingResult({ edge, held, plate, plateHeight, blankHeight, ground }: GrindingSetUp, to: InUnits) {
  return {
    edge,
    pitched: angle(held.pitched),
    rolled: angle(held.rolled),
    plate: angle(plate),
    plateHeight: to(plateHeight),
    blankHeight: to(blankHeight),
    squareToEdge: angle(ground.squareToEdge),
    side: angle(ground.side),
  };
}

function tapResult({ bore, pitchDiameter, core, steps, leadIn, full, length }: Tap, to: InUnits) {
  return {
    bore: to(bore),
    pitchDiameter: to(pitchDiameter),
    core: to(core),
    steps: steps.map(({ diameter, share, chip, taper }) => ({
      diameter: to(diameter),
      share,
      chip: to(chip),
      taper: angle(taper),
    })),
    leadIn: to(leadIn),
    full: to(full),
    length: to(length),
  };
}

function passesResult({ passes }: Replacement, to: InUnits) {
  return passes.map(({ depth, alongFlank, sideways }) => ({
    depth: to(depth),
    alongFlank: to(alongFlank),
    sideways: to(sideways),
  }));
}

function wearResult({ places, deepest, state }: ThreadWear, to: InUnits) {
  const place = ({ position, thickness, worn, shareLeft }: PlaceWear) => ({
    position: to(position),
    thickness: to(thickness),
    worn: to(worn),
    shareLeft: roundTo(shareLeft, 4),
  });
  return { places: places.map(place), deepest: place(deepest), state };
}
