import type { Check } from "./check.ts";

const SURE = 0.98;

/** Stations that differ by more than their repeats and the wear of a screw explain: a wobble once per turn, mostly. */
export const stationEffect: Check = ({
  corrected,
  stationEffect: { chance, deviation },
  settings,
  lengths,
}) => {
  if (chance < SURE) return [];
  return [
    {
      check: "stations differ by more than repeats do",
      severity: "warning",
      message: `Neighbouring stations differ by more than repeats there do, by about ${lengths.lostMotion(2 * deviation)}: a screw that is bent or turns off its centre (once in a lead of ${lengths.position(settings.lead)}), or a slide that yaws. Read one stretch again at every quarter of a turn.`,
      readings: corrected.readings.flatMap((reading) => reading.from),
    },
  ];
};
