import { estimateWords, inAHundred } from "../../../report/words.ts";
import { lines } from "./lines.ts";
import type { PartMaker } from "./part.ts";

/** What taking up the nut removes and what it leaves, and where the screw has worn. */
export const afterAdjusting: PartMaker = ({ assessment, lengths, isReady }) => {
  if (!isReady) return null;
  const { takeUp, afterAdjusting: left, uneven, unevenChance, wornZones } = assessment;
  return {
    title: "What adjusting would leave",
    isOpen: false,
    content: lines([
      `Taking up the nut can remove ${estimateWords(takeUp, lengths)}, everywhere alike; then it binds at the tight spot.`,
      `That leaves ${estimateWords(left.worst, lengths)} where it is worst, at about ${lengths.spot(left.position)}.`,
      `The uneven part is ${estimateWords(uneven, lengths)}; the chance that it is real is ${inAHundred(unevenChance)}.`,
      ...wornZones.map(
        ({ from, to, atLeast }) =>
          `The thread has worn by at least ${lengths.lostMotion(atLeast)} from about ${lengths.spot(from)} to ${lengths.spot(to)}, both flanks together.`,
      ),
    ]),
  };
};
