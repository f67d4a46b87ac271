import { isPositioning } from "../../inspection/readingShapes.ts";
import type { Inspection, Reading } from "../../inspection/schema.ts";
import { convertLength, lengthUnit, plainUnit } from "../../intake/lengthUnit.ts";
import { type UnitDoubt, unitDoubts } from "../../intake/unitDoubts.ts";
import type { PendingInput } from "../../records/editorState.ts";
import { setupUnits } from "./slideSetup.ts";

/** Where the positions of readings make no sense on the slide that was described for them. */
export function positionUnitDoubt({ slide, surveys }: Inspection): UnitDoubt | undefined {
  const readings = surveys.flatMap((survey) => survey.readings);
  const column = { header: "", as: "position", takenAs: "position", unit: slide.units, why: "" } as const;
  const doubts = unitDoubts({ readings, units: slide.units, columns: [column] }, slide.travel);
  return doubts.find((doubt) => doubt.of === "position");
}

/** The draft with the positions of the readings that wait taken to be in another unit than they were. */
export function withPositionsIn(draft: PendingInput, unit: string): PendingInput {
  const { waiting } = draft;
  const from = lengthUnit(unit);
  if (waiting === undefined || from === undefined) return draft;
  const to = plainUnit(setupUnits(draft));
  const moved = (reading: Reading): Reading =>
    isPositioning(reading)
      ? { ...reading, target: convertLength(reading.target, from, to) }
      : { ...reading, position: convertLength(reading.position, from, to) };
  return { ...draft, waiting: { ...waiting, readings: waiting.readings.map(moved) } };
}
