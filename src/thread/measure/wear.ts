import type { ThreadForm } from "../form.ts";
import type { ThreadSize } from "../size.ts";
import { type Groove, threadThickness } from "./groove.ts";
import { overWires, pitchDiameterFrom, type WireRule } from "./overWires.ts";

/** The screw's thread measured at a place along it. Lengths in millimetres. */
export interface ThreadPlace {
  readonly position: number;
  /** Axial thickness of the thread at the basic pitch diameter. */
  readonly thickness: number;
}

/** A place with what the thread has lost there. */
export interface PlaceWear extends ThreadPlace {
  /** Both flanks together, in millimetres, against the thickest place that was measured. */
  readonly worn: number;
  /** Thickness as a share of half a pitch, which it is made to. */
  readonly shareLeft: number;
}

/** What a screw's thread measured at several places says by itself. */
export type ThreadState = "out-of-use" | "remake" | "usable";

export interface ThreadWear {
  readonly places: readonly PlaceWear[];
  /** Where the thread is thinnest. */
  readonly deepest: PlaceWear;
  /** What stands for unworn thread: the thickest place. */
  readonly reference: PlaceWear;
  readonly state: ThreadState;
}

/** Below these shares of its thickness a thread is taken out of use, or remade whatever the backlash says. */
const OUT_OF_USE = 1 / 3;
const REMAKE = 3 / 4;

/** The thread's thickness from a measurement over wires, in millimetres; NaN where no thread gives it. */
export function thicknessFromWires(
  form: ThreadForm,
  size: ThreadSize,
  groove: Groove,
  measured: number,
  wire: number,
  rule: WireRule,
): number {
  const { pitch } = form.diameters(size);
  return threadThickness(groove, pitch, pitchDiameterFrom(groove, measured, wire, rule));
}

/**
 * The wear of a screw from thicknesses at several places. Worn is told against the thickest of them: give a place that
 * never runs among them, or wear that is everywhere stays hidden. Throws where there is no place.
 *
 * @param pitch of the thread, in millimetres
 */
export function threadWear(pitch: number, measured: readonly ThreadPlace[]): ThreadWear {
  const unworn = Math.max(...measured.map(({ thickness }) => thickness));
  const places = measured.map((place) => ({
    ...place,
    worn: unworn - place.thickness,
    shareLeft: place.thickness / (pitch / 2),
  }));
  const byWear = [...places].sort((a, b) => a.worn - b.worn);
  const [reference, deepest] = [byWear[0], byWear.at(-1)];
  if (reference === undefined || deepest === undefined) throw new Error("No place was measured.");
  const { shareLeft } = deepest;
  const state = shareLeft < OUT_OF_USE ? "out-of-use" : shareLeft < REMAKE ? "remake" : "usable";
  return { places, deepest, reference, state };
}

/** What a reading over wires has still to lose until a pitch diameter is reached, in millimetres. */
export function stillToComeOff(
  groove: Groove,
  measured: number,
  target: number,
  wire: number,
  rule: WireRule,
): number {
  return measured - overWires(groove, target, wire, rule);
}
