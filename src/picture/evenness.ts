import type { Assessment } from "../analysis/assessment.ts";
import type { Lengths } from "../inspection/lengths.ts";

/** Whether the readings show that lost motion differs along the travel, show that it does not, or leave it open. */
export type Evenness = "uneven" | "even" | "open";

/** Places are named only if the uneven part is real with at least this chance. */
const SHOWN_FROM = 0.95;

/** Whether lost motion is uneven. If that is not shown, tight and loosest spot are only where readings scattered. */
export function evennessOf({ uneven, unevenChance }: Assessment, lengths: Lengths): Evenness {
  const shows = (part: number): boolean => part > 0 && lengths.figure(part) !== lengths.figure(0);
  if (unevenChance >= SHOWN_FROM && shows(uneven.low)) return "uneven";
  return shows(uneven.value) ? "open" : "even";
}
