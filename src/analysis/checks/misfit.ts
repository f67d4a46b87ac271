import { type Check, placesOf } from "./check.ts";

/** Standard deviations of a station's mean that no clean survey among thousands reaches. */
const FAR = 7;

/** Readings that no wear of a screw explains, however it is drawn through them: the numbers mean nothing then. */
export const misfit: Check = ({ corrected, stations, repeatability, fitted, stationEffect, lengths }) => {
  const { resolution, roundings } = corrected;
  const rounding = (roundings * resolution.step ** 2) / 12;
  const far = stations.filter(({ mean, readings }, i) => {
    const variance = repeatability ** 2 / readings.length + rounding + stationEffect.deviation ** 2;
    return Math.abs(mean - fitted[i]) > FAR * Math.sqrt(variance);
  });
  if (far.length === 0) return [];
  const readings = far.flatMap((station) => station.readings);
  return [
    {
      check: "readings fit no worn screw",
      severity: "stop",
      message: `No wear of a screw passes through the readings at ${placesOf(readings, lengths)}. Read ${far.length === 1 ? "this station" : "these stations"} again, and look at the sheet for figures that were swapped.`,
      readings: readings.flatMap((reading) => reading.from),
    },
  ];
};
