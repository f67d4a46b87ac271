import type { Lengths } from "../../inspection/lengths.ts";
import type { Survey } from "../../inspection/schema.ts";
import type { Finding } from "../assessment.ts";
import type { Corrected, LostMotion } from "../corrected.ts";
import type { Coverage } from "../coverage.ts";
import type { Settings } from "../settings.ts";
import type { Station } from "../stations.ts";

/** What a check may look at; lengths in millimetres. */
export interface Surveyed {
  readonly survey: Survey;
  readonly corrected: Corrected;
  readonly stations: readonly Station[];
  readonly settings: Settings;
  readonly coverage: Coverage;
  /** One standard deviation of a reading, as the profile's model has it. */
  readonly repeatability: number;
  readonly lengths: Lengths;
}

/** A check names the readings it is about, says why, and what to do. It finds nothing, or one thing or more. */
export type Check = (surveyed: Surveyed) => readonly Finding[];

/** `Reading 7 at 120 mm`: readings are counted from 1 for the reader, as the file and the page show them. */
export function nameOf(reading: LostMotion, lengths: Lengths): string {
  return `Reading ${(reading.from[0] ?? 0) + 1} at ${lengths.position(reading.position)}`;
}

/** What the other readings lead one to expect of this one: the other repeats, or else the stations to either side. */
export function expectedOf(reading: LostMotion, stations: readonly Station[]): number | undefined {
  const index = stations.findIndex((station) => station.readings.includes(reading));
  const others = stations[index].readings.filter((other) => other !== reading);
  if (others.length > 0) return middle(others.map((other) => other.value));
  const before = stations[index - 1];
  const after = stations[index + 1];
  if (before === undefined || after === undefined) return (before ?? after)?.mean;
  const share = (reading.position - before.position) / (after.position - before.position);
  return before.mean + share * (after.mean - before.mean);
}

function middle(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const half = Math.floor(sorted.length / 2);
  return sorted.length % 2 === 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
}
