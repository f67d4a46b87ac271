import { lines } from "../../document/lines.ts";
import type { SectionMaker } from "../reported.ts";

/** Which readings would tell most, and why. */
export const nextReadings: SectionMaker = ({ assessment, lengths }) => {
  const next = assessment.nextReadings.map((reading) => {
    const place = "endFloat" in reading ? "The end float" : `At about ${lengths.spot(reading.position)}`;
    return `${place}. ${reading.why}`;
  });
  return next.length === 0 ? null : { title: "What to read next", content: lines(next) };
};
