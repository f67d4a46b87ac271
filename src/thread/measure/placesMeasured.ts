import { failed, type Outcome, succeeded } from "../../inspection/problem.ts";
import type { ThreadForm } from "../form.ts";
import type { ThreadSize } from "../size.ts";
import { ruleFor } from "./overWires.ts";
import { type ThreadPlace, thicknessFromWires } from "./wear.ts";
import { chosenWire, grooveOf, wireRange } from "./wires.ts";

/** The thread as it was measured at a place: its thickness, or over wires. Lengths in millimetres. */
export interface PlaceRead {
  readonly position: number;
  readonly thickness?: number | undefined;
  readonly overWires?: number | undefined;
  /** Diameter of the wires; the one that is best for the thread where it is not said. */
  readonly wire?: number | undefined;
}

/** A thread that is this much thicker than half a pitch is another thread, or another unit; in pitches. */
const THICKEST = 0.6;

/** The thickness at each place. Fails, naming the place, where a reading cannot be of this thread. */
export function placesMeasured(
  form: ThreadForm,
  size: ThreadSize,
  reads: readonly PlaceRead[],
): Outcome<readonly ThreadPlace[]> {
  const places: ThreadPlace[] = [];
  for (const [index, read] of reads.entries()) {
    const thickness = read.thickness ?? fromWires(form, size, read);
    if (typeof thickness !== "number") return thickness;
    if (!(thickness > 0 && thickness < THICKEST * size.pitch))
      return failed(
        `thread[${index}]`,
        "a thread of this pitch cannot be so thick or thin",
        "Check the reading, its unit, and the wire.",
      );
    places.push({ position: read.position, thickness });
  }
  return succeeded(places);
}

function fromWires(form: ThreadForm, size: ThreadSize, read: PlaceRead): number | Outcome<never> {
  const groove = grooveOf(form, size);
  if (groove === null)
    return failed(
      "thread",
      "a square thread has no measurement over wires",
      "Measure the thickness of its thread instead.",
    );
  const wire = chosenWire(wireRange(form, size, groove), read.wire);
  if (!wire.ok) return wire;
  const rule = ruleFor(groove, form.diameters(size).pitch, wire.value);
  return thicknessFromWires(form, size, groove, read.overWires ?? Number.NaN, wire.value, rule);
}
