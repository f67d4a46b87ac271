import type { Assessment } from "../../analysis/assessment.ts";
import type { Lengths } from "../../inspection/lengths.ts";
import type { ThreadWear } from "../../thread/measure/wear.ts";

/** How what was measured on the thread itself stands to the verdict from lost motion. */
export interface BesideVerdict {
  readonly stand: "agrees" | "disagrees" | "adds";
  readonly words: string;
}

/** Thickness is measured no closer than this, in millimetres: what differs by less agrees. */
const MEASURED_TO = 0.02;

/** Sets the wear of the thread, measured directly, beside the verdict on a survey. */
export function besideVerdict(assessment: Assessment, wear: ThreadWear, lengths: Lengths): BesideVerdict {
  const { verdict, likeliest, uneven, loosestSpot } = assessment;
  const { deepest, places, state } = wear;
  const worn = `the thread has worn by ${lengths.lostMotion(deepest.worn)} at ${lengths.position(deepest.position)}, both flanks together`;
  const part = `the uneven part of the lost motion is ${lengths.lostMotion(uneven.value)}`;
  if (state === "out-of-use")
    return {
      stand: verdict === "remake-screw" ? "agrees" : "adds",
      words:
        "Less than a third of the thread is left: do not use the slide under load until it is inspected.",
    };
  if ((verdict === "measure-more" ? likeliest : verdict) === "remake-screw") {
    if (deepest.worn >= uneven.low - MEASURED_TO)
      return { stand: "agrees", words: `It agrees with a worn screw: ${worn}; ${part}.` };
    return places.some(({ position }) => isInWornZone(position, assessment))
      ? {
          stand: "disagrees",
          words: `It disagrees with a worn screw: ${worn}, but ${part}. Look for a loose gib, uneven drag or a nut bracket out of line before parts are made.`,
        }
      : {
          stand: "adds",
          words: `It does not yet tell: no place that was measured lies where lost motion shows wear. Measure the thread at about ${lengths.spot(loosestSpot.position)}.`,
        };
  }
  if (state === "remake")
    return {
      stand: "disagrees",
      words: `Less than three quarters of the thread are left at ${lengths.position(deepest.position)}: remake the screw whatever the lost motion says.`,
    };
  return deepest.worn > uneven.high + MEASURED_TO
    ? {
        stand: "adds",
        words: `It adds to the verdict: ${worn}, more than lost motion shows (${lengths.lostMotion(uneven.high)} at most); a worn patch shorter than the nut does not show there.`,
      }
    : { stand: "agrees", words: `It agrees with the verdict: ${worn}; ${part}.` };
}

function isInWornZone(position: number, { wornZones }: Assessment): boolean {
  return wornZones.some(({ from, to }) => position >= from && position <= to);
}
