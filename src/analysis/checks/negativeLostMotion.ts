import { type Check, nameOf, placesOf } from "./check.ts";

/** Lost motion below nothing by more than noise: two readings were swapped, an approach was too short, or the sign is. */
export const negativeLostMotion: Check = ({ corrected, repeatability, lengths }) => {
  const { readings, resolution } = corrected;
  const below = readings.filter((reading) => reading.value < -3 * repeatability - resolution.step / 2);
  if (below.length === 0) return [];
  const reversed = below.length > readings.length / 2;
  const [first] = below;
  const which =
    below.length === 1
      ? `${nameOf(first, lengths)} comes out as ${lengths.lostMotion(first.value)}, below nothing`
      : `${below.length} readings come out below nothing (${placesOf(below, lengths)})`;
  return [
    {
      check: "negative lost motion",
      severity: reversed ? "stop" : "warning",
      message: reversed
        ? `${which}: the signs look reversed. Enter lost motion without its sign.`
        : `${which}: advancing and retracting were swapped, or an approach was shorter than the lost motion. Take ${below.length === 1 ? "it" : "them"} again.`,
      readings: below.flatMap((reading) => reading.from),
    },
  ];
};
