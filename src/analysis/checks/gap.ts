import type { Check } from "./check.ts";

/** A part of the working range with no station within the nut's length. */
export const gap: Check = ({ coverage, lengths }) =>
  coverage.gaps.map(({ from, to }) => ({
    check: "gap in coverage",
    severity: "warning" as const,
    message: `No station lies within the nut's length of the stretch from ${lengths.spot(from)} to ${lengths.spot(to)}. Read at least one there.`,
    readings: [],
  }));
