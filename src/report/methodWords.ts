import type { Method } from "../inspection/schema.ts";

/** How readings were taken, for those who were not there. */
export const METHOD_WORDS: Readonly<Record<Method, string>> = {
  "push-pull":
    "Push–pull. Indicator on the slide, screw held still: the slide was pushed, then pulled by hand until it was stopped. The sweep of the indicator is the lost motion.",
  "indicator-pair":
    "Indicator pair. Indicator on the slide: the handwheel was brought to the same dial mark once while advancing and once while retracting, and the indicator was read each time. The difference of the two is the lost motion.",
  "dial-pair":
    "Dial pair. Indicator on the slide: the handwheel was turned until the indicator just returned to its mark, once from each side, and the handwheel's dial was read each time. The difference of the two, across the dial's zero, times the travel of a division is the lost motion.",
  positioning:
    "Positions at targets. The slide was brought to each target from either side, and its true position was read each time. The difference of the two is the lost motion.",
};
