import type { Assessment } from "../analysis/assessment.ts";
import type { Lengths } from "../inspection/lengths.ts";

/** Whether the readings show that lost motion differs along the travel, do not, or leave it open. */
export type Evenness = "uneven" | "even" | "open";

/** A place is named only where the uneven part is as likely as this to be real. */
const SHOWN_FROM = 0.95;

/**
 * What may be said of places along the travel. Only where lost motion is shown to be uneven does a tight or a loosest
 * spot mean anything; elsewhere it is where the readings happened to scatter.
 */
export function evennessOf({ uneven, unevenChance }: Assessment, lengths: Lengths): Evenness {
  const shows = (part: number): boolean => part > 0 && lengths.figure(part) !== lengths.figure(0);
  if (unevenChance >= SHOWN_FROM && shows(uneven.low)) return "uneven";
  return shows(uneven.value) ? "open" : "even";
}
