import { failed, type Outcome, succeeded } from "../../inspection/problem.ts";
import type { Method } from "../../inspection/schema.ts";

/** A way of measuring lost motion; positions at targets, which a plan of stations does not serve, are not one. */
export type LostMotionMethod = Exclude<Method, "positioning">;

/** What a person does to take a reading. */
export interface MethodWords {
  readonly name: string;
  /** What is written down at a station, one figure a column. */
  readonly columns: readonly string[];
  readonly how: string;
}

export const METHODS: Readonly<Record<LostMotionMethod, MethodWords>> = {
  "push-pull": {
    name: "push–pull",
    columns: ["lost motion"],
    how: "Indicator on the slide, screw held still. Push the slide by hand until it is stopped, then pull it until it is stopped: the sweep of the indicator is the lost motion.",
  },
  "indicator-pair": {
    name: "indicator pair",
    columns: ["advancing", "retracting"],
    how: "Indicator on the slide. Bring the handwheel to the same dial mark once while advancing and once while retracting, and write the indicator's reading each time. Do not touch the indicator between the two.",
  },
  "dial-pair": {
    name: "dial pair",
    columns: ["advancing", "retracting"],
    how: "Indicator on the slide. Turn the handwheel until the indicator just returns to its mark, once while advancing and once while retracting, and write the handwheel dial's reading each time, in divisions. Note where the dial passes its zero between the two.",
  },
};

/** The way of measuring, where it is one that a plan of stations serves. */
export function lostMotionMethod(method: Method): Outcome<LostMotionMethod> {
  if (method !== "positioning") return succeeded(method);
  return failed(
    "method",
    "positions at targets are read by their own rule, five runs each way",
    "Plan for push-pull, indicator-pair or dial-pair.",
  );
}
