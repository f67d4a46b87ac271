import { withValueAt } from "../inspection/plainData.ts";
import { failed, type Outcome, succeeded } from "../inspection/problem.ts";
import { type Method, surveySchema } from "../inspection/schema.ts";
import type { Units } from "../inspection/units.ts";
import type { Statement } from "../intake/statements.ts";
import { type CommandLine, type OptionSpec, textOf } from "./command.ts";

/** An option that overrides what the file says at one place of the inspection. */
interface Override extends OptionSpec {
  readonly value: string;
  /** The dotted name of the place. */
  readonly key: string;
  readonly read: (text: string) => Outcome<unknown>;
}

const LENGTH = "LENGTH";
const UNITS: readonly Units[] = ["mm", "in"];
const METHODS: readonly Method[] = surveySchema.shape.method.options;

/** Options about the slide or the survey, each with the place of the inspection that it fills. */
const OVERRIDE_TABLE = [
  ["units", "mm|in", "slide.units", oneOf(UNITS), "of these lengths, the answer, and logs without"],
  ["lead", LENGTH, "slide.screw.lead", number, "travel for one turn of the screw"],
  ["travel", "FROM..TO", "slide.travel", range, "the slide's travel"],
  ["working", "FROM..TO", "slide.workingRange", range, "the part of the travel that is worked in"],
  ["limit", LENGTH, "slide.backlashLimit", number, "greatest lost motion allowed"],
  ["running-clearance", LENGTH, "slide.runningClearance", number, "left in the nut at the tight spot"],
  ["engaged", LENGTH, "slide.nut.engagedLength", number, "length of screw that the nut engages"],
  ["adjustable", "yes|no", "slide.nut.adjustable", yesOrNo, "whether the nut can be adjusted"],
  ["take-up", LENGTH, "slide.nut.takeUpLeft", number, "how much the nut can still take up"],
  ["holds-load", "yes|no", "slide.holdsLoad", yesOrNo, "whether the screw holds up a load"],
  ["resolution", LENGTH, "survey.indicator.resolution", number, "the indicator's graduation"],
  ["end-float", LENGTH, "survey.endFloat", singleNumber, "end float as measured"],
  ["method", "METHOD", "survey.method", oneOf(METHODS), METHODS.join(", ")],
] as const;

export const OVERRIDES: readonly Override[] = OVERRIDE_TABLE.map(([name, value, key, read, help]) => ({
  name,
  value,
  key,
  read,
  help,
}));

/** The options that fill these places, as a command line writes them: `--lead LENGTH --limit LENGTH`. */
export function optionsFor(keys: readonly string[]): string {
  return OVERRIDES.filter(({ key }) => keys.some((each) => each === key || each.startsWith(`${key}.`)))
    .map(({ name, value }) => `--${name} ${value}`)
    .join(" ");
}

/** What the command line states about slide and survey. */
export interface CommandStatement extends Statement {
  readonly method: Method | undefined;
  /** The options as they were given; empty where there are none. */
  readonly words: string;
}

/** Reads the overrides of a command line; a problem where a value cannot be read. */
export function readOverrides(line: CommandLine): Outcome<CommandStatement> {
  let parts = { slide: {}, survey: {} };
  const words: string[] = [];
  for (const { name, key, read } of OVERRIDES) {
    const text = textOf(line, name);
    if (text === undefined) continue;
    const value = read(text);
    if (!value.ok) return failed(`--${name}`, value.problem.what, value.problem.cure);
    parts = withValueAt(parts, key, value.value);
    words.push(`--${name} ${text}`);
  }
  return succeeded({
    by: "the command",
    ...parts,
    units: UNITS.find((each) => each === textOf(line, "units")),
    method: METHODS.find((each) => each === textOf(line, "method")),
    words: words.join(" "),
  });
}

function number(text: string): Outcome<number> {
  const value = Number(text);
  return text.trim() !== "" && Number.isFinite(value)
    ? succeeded(value)
    : failed(
        "",
        `"${text}" is not a number`,
        "Write it with a decimal point and without its unit, such as 0.15.",
      );
}

function singleNumber(text: string): Outcome<readonly number[]> {
  const value = number(text);
  return value.ok ? succeeded([value.value]) : value;
}

function range(text: string): Outcome<{ readonly from: number; readonly to: number }> {
  const [from, to, ...more] = text.split("..").map(number);
  return from?.ok && to?.ok && more.length === 0
    ? succeeded({ from: from.value, to: to.value })
    : failed("", `"${text}" is not a range`, "Write it as FROM..TO, such as 0..300.");
}

function yesOrNo(text: string): Outcome<boolean> {
  const answer = oneOf(["yes", "no"])(text);
  return answer.ok ? succeeded(answer.value === "yes") : answer;
}

function oneOf(choices: readonly string[]) {
  return (text: string): Outcome<string> =>
    choices.includes(text)
      ? succeeded(text)
      : failed("", `"${text}" is not one of its values`, `Write one of: ${choices.join(", ")}.`);
}
