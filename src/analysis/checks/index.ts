import type { Finding } from "../assessment.ts";
import type { Check, CheckInput } from "./check.ts";
import { drift } from "./drift.ts";
import { drivePlay } from "./drivePlay.ts";
import { duplicateRows } from "./duplicateRows.ts";
import { endFloat } from "./endFloat.ts";
import { fewGraduations } from "./fewGraduations.ts";
import { fewRuns } from "./fewRuns.ts";
import { gap } from "./gap.ts";
import { growingScatter } from "./growingScatter.ts";
import { inStepWithLead } from "./inStepWithLead.ts";
import { limitNotAttainable } from "./limitNotAttainable.ts";
import { misfit } from "./misfit.ts";
import { negativeLostMotion } from "./negativeLostMotion.ts";
import { noRepeats } from "./noRepeats.ts";
import { outlyingReading } from "./outlyingReading.ts";
import { outsideTravel } from "./outsideTravel.ts";
import { slip } from "./slip.ts";
import { stationEffect } from "./stationEffect.ts";
import { withoutPartner } from "./withoutPartner.ts";
import { wobble } from "./wobble.ts";

/** Every check, in the order in which findings are reported. A new check is one file and one line here. */
const CHECKS: readonly Check[] = [
  limitNotAttainable,
  slip,
  outlyingReading,
  negativeLostMotion,
  misfit,
  outsideTravel,
  duplicateRows,
  withoutPartner,
  drift,
  wobble,
  stationEffect,
  growingScatter,
  endFloat,
  drivePlay,
  gap,
  noRepeats,
  fewRuns,
  fewGraduations,
  inStepWithLead,
];

/** Runs every check. */
export function runChecks(input: CheckInput): readonly Finding[] {
  return CHECKS.flatMap((check) => check(input));
}
