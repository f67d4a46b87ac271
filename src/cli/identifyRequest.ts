import { failed, type Outcome, succeeded } from "../inspection/problem.ts";
import type { Units } from "../inspection/units.ts";
import { type Identification, identify } from "../thread/identify/identify.ts";
import { type CommandLine, textOf } from "./command.ts";
import { choiceOf, optionReader, POSITIVE, unitBesideOption, WORN_OPTIONS } from "./threadOptions.ts";

/** What a worn screw was found to be, with the unit to tell it in. */
export interface Identified {
  readonly found: Identification;
  readonly units: Units;
  readonly assumed: readonly string[];
}

/** Measuring with a calliper and counting by eye, 95 %: millimetres, and degrees of the included angle. */
const UNCERTAINTY = 0.05;
const OVER_UNCERTAINTY = 0.2;
const ANGLE_UNCERTAINTY = 1;

/** Whether the command line asks what a worn screw is. */
export function asksToIdentify(line: CommandLine): boolean {
  return WORN_OPTIONS.some(({ name }) => textOf(line, name) !== undefined);
}

/** Identifies the worn screw that the options tell of. */
export function identifySaid(line: CommandLine): Outcome<Identified> {
  const missing = ["outside", "turns", "over"].filter((name) => textOf(line, name) === undefined);
  if (missing.length > 0)
    return failed(
      missing.map((name) => `--${name}`).join(", "),
      "is missing: a worn thread is identified from its outside and a distance over counted turns",
      "Give --outside D --turns N --over LENGTH.",
    );
  const stated = choiceOf(line, "units");
  if (!stated.ok) return stated;
  const units = stated.value ?? unitBesideOption(line, "outside") ?? "mm";
  const read = optionReader(line, units);
  const lengths = {
    outside: read.length("outside"),
    distance: read.length("over"),
    root: read.length("root"),
    uncertainty: read.length("uncertainty"),
    ofDistance: read.length("over-uncertainty"),
    turns: read.number("turns", POSITIVE),
    angle: read.number("angle", {
      isAllowed: (value) => value >= 0 && value < 120,
      words: "an included angle",
    }),
  };
  for (const each of Object.values(lengths)) if (!each.ok) return each;
  const value = (name: keyof typeof lengths): number | undefined => {
    const each = lengths[name];
    return each.ok ? each.value : undefined;
  };
  const uncertainty = value("uncertainty") ?? UNCERTAINTY;
  const [angle, root] = [value("angle"), value("root")];
  const found = identify({
    outside: value("outside") ?? 0,
    distance: value("distance") ?? 0,
    turns: value("turns") ?? 0,
    ...(angle === undefined ? {} : { angle }),
    ...(root === undefined ? {} : { root }),
    uncertainty: {
      outside: uncertainty,
      distance: value("ofDistance") ?? OVER_UNCERTAINTY,
      angle: ANGLE_UNCERTAINTY,
    },
  });
  if (!found.ok) return failed(`--${found.problem.where}`, found.problem.what, found.problem.cure);
  return succeeded({
    found: found.value,
    units,
    assumed: [
      ...(stated.value === undefined && unitBesideOption(line, "outside") === undefined
        ? ["Lengths are in millimetres."]
        : []),
      ...(value("uncertainty") === undefined
        ? ["Diameters were measured to 0.05 mm (0.002 in), 95 %; --uncertainty says otherwise."]
        : []),
      ...(value("ofDistance") === undefined
        ? ["The distance was measured to 0.2 mm (0.008 in), 95 %; --over-uncertainty says otherwise."]
        : []),
      "Threads are counted one by one, whatever the number of starts.",
    ],
  });
}
