import { mean } from "simple-statistics";
import { roundingVariance, tailProbability } from "../correct/repeatability.ts";
import { SAME_PLACE } from "../correct/samePlace.ts";
import { isSignificant } from "../statistics/falsePositiveRate.ts";
import type { Check, CheckInput } from "./check.ts";

/**
 * Stations that all meet the screw at one angle, so that a wobble once per turn does not show. Over an arc of the turn
 * a wobble changes by at most its height times the sine of half the arc. The wobble considered is one that alone would
 * use up what the limit leaves for an uneven screw. It is hidden if the scatter of two stations' difference reaches that
 * change more often than `isSignificant` allows.
 */
export const inStepWithLead: Check = (input) => {
  const { corrected, stations, settings, lengths } = input;
  // Two stations are always in step with some lead.
  if (stations.length < 3) return [];
  const arc = arcOf(stations.map(({ position }) => position / settings.lead));
  const exact = SAME_PLACE / settings.lead;
  const hidden = isHidden(1, input) ? arc <= exact : arc < 0.5 && isHidden(Math.sin(Math.PI * arc), input);
  if (!hidden) return [];
  return [
    {
      check: "in step with the lead",
      severity: "note",
      message: `All stations are whole turns of the screw apart (lead ${lengths.position(settings.lead)}), so a bent screw or an eccentric journal would not show. Read two or three stations a quarter and half a turn away.`,
      readings: corrected.readings.flatMap((reading) => reading.from),
    },
  ];
};

/** Whether scatter may cause as great a difference of two stations as this share of the wobble. */
function isHidden(share: number, { corrected, stations, scatter, settings }: CheckInput): boolean {
  const height = settings.limit - settings.runningClearance - settings.endFloatAttainable;
  const times = 2 / mean(stations.map(({ readings }) => readings.length));
  return !isSignificant(2 * tailProbability(share * height, scatter, times, 2 * roundingVariance(corrected)));
}

/** The shortest arc that contains all angles, as a share of a turn. */
function arcOf(turns: readonly number[]): number {
  const angles = turns.map((turn) => turn - Math.floor(turn)).sort((a, b) => a - b);
  const gaps = angles.map((angle, i) => (angles[i + 1] ?? angles[0] + 1) - angle);
  return 1 - Math.max(...gaps);
}
