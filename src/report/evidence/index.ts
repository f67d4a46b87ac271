import { alternatives } from "./alternatives.ts";
import { assumed } from "./assumed.ts";
import { chances } from "./chances.ts";
import { checks } from "./checks.ts";
import type { EvidencePart } from "./evidence.ts";
import { nextReadings } from "./nextReadings.ts";
import { numbers } from "./numbers.ts";
import { positioning } from "./positioning.ts";
import { uncertainty } from "./uncertainty.ts";

/** What stands behind a verdict, in the order in which the page and the terminal show it: what to act on comes first. */
export const EVIDENCE: readonly EvidencePart[] = [
  nextReadings,
  chances,
  checks,
  alternatives,
  numbers,
  positioning,
  uncertainty,
  assumed,
];
