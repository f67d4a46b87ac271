import type { Check } from "./check.ts";

/** A share of a turn within which stations meet the screw at one angle. */
const SAME_ANGLE = 0.04;

/** Stations all a whole number of turns apart, which cannot show a wobble once per turn of the screw. */
export const inStepWithLead: Check = ({ corrected, stations, settings, lengths }) => {
  if (stations.length < 3) return [];
  const first = stations[0].position;
  const inStep = stations.every((station) => {
    const turns = (station.position - first) / settings.lead;
    return Math.abs(turns - Math.round(turns)) <= SAME_ANGLE;
  });
  if (!inStep) return [];
  return [
    {
      check: "in step with the lead",
      severity: "note",
      message: `All stations are whole turns of the screw apart (lead ${lengths.position(settings.lead)}), so a bent screw or an eccentric journal would not show. Read two or three stations a quarter and half a turn away.`,
      readings: corrected.readings.flatMap((reading) => reading.from),
    },
  ];
};
