import type { Method, Survey } from "../../../inspection/schema.ts";
import type { Units } from "../../../inspection/units.ts";
import { type LengthUnit, lengthUnit } from "../../../intake/lengthUnit.ts";
import type { Counts } from "../../../intake/typedFigure.ts";

/** A figure that is asked for at a station: its column, its name, and what to do to get it. */
export interface Asked {
  readonly column: "backlash" | "advancing" | "retracting";
  readonly label: string;
  readonly counts: Counts;
  readonly todo: (position: string) => string;
}

/** What is asked for at each station, in order; null for a way of measuring that is not done station by station. */
export function askedOf({ method }: Survey, units: Units): readonly Asked[] | null {
  const words = WORDS[method];
  return words?.map((asked) => ({ ...asked, counts: method === "dial-pair" ? "divisions" : units })) ?? null;
}

const WORDS: Readonly<Partial<Record<Method, readonly Omit<Asked, "counts">[]>>> = {
  "push-pull": [
    {
      column: "backlash",
      label: "Sweep of the indicator",
      todo: (position) =>
        `Move to ${position}. Hold the screw still, push the slide until it stops, then pull it until it stops.`,
    },
  ],
  "indicator-pair": [
    {
      column: "advancing",
      label: "Indicator, advancing",
      todo: (position) =>
        `Come up to ${position} while advancing, by more than the lost motion, and stop at a mark of the handwheel’s dial.`,
    },
    {
      column: "retracting",
      label: "Indicator, retracting",
      todo: () => "Go on past it, then come back to the same mark of the dial while retracting.",
    },
  ],
  "dial-pair": [
    {
      column: "advancing",
      label: "Dial, advancing",
      todo: (position) =>
        `Set the indicator’s mark at ${position}. Come up to it while advancing, until the indicator just returns to its mark.`,
    },
    {
      column: "retracting",
      label: "Dial, retracting",
      todo: () =>
        "Go on past it, then come back while retracting, until the indicator just returns to its mark.",
    },
  ],
};

const CHOICES: Readonly<Record<Units, readonly string[]>> = {
  mm: ["mm", "µm", "thou"],
  in: ["in", "thou", "mm"],
};

/** The units that bare figures can be taken in, the slide's own first; none for what is no length. */
export function unitChoices(counts: Counts): readonly LengthUnit[] {
  if (counts !== "mm" && counts !== "in") return [];
  return CHOICES[counts].flatMap((name) => lengthUnit(name) ?? []);
}

/** `first`, `second`, `third` and on. */
export function ordinal(count: number): string {
  return ["first", "second", "third", "fourth", "fifth"][count - 1] ?? `${count}th`;
}
