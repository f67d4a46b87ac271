import { between, logBetween } from "../../wear.ts";
import { type Kind, scaledTo } from "../kind.ts";
import { gaussianProcess } from "./smoothRandom.ts";

/** Screws that are even, worn alike all along or not at all, or that are uneven by a few hundredths at most. */
export const nearlyEven: Kind = {
  name: "nearly even",
  wear: (random, screw) => {
    const all = random() < 0.4 ? 0 : logBetween(random, 0.01, 0.2);
    const share = between(random, 0.3, 0.7);
    if (random() < 0.5) return [() => share * all, () => (1 - share) * all];
    const process = gaussianProcess(random, between(random, 0.1, 0.5) * screw.travel);
    const uneven = scaledTo(logBetween(random, 0.001, 0.02), (place) => 3 + process(place), screw);
    return [(place) => share * all + uneven(place), () => (1 - share) * all];
  },
};
