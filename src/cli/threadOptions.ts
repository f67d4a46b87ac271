import { failed, type Outcome, succeeded } from "../inspection/problem.ts";
import { MILLIMETRES_PER_INCH, toMillimetres, type Units } from "../inspection/units.ts";
import { readCell } from "../intake/cell.ts";
import { readTypedFigure } from "../intake/typedFigure.ts";
import { FORMS } from "../thread/forms/index.ts";
import { type CommandLine, type OptionSpec, textOf } from "./command.ts";

const LENGTH = "LENGTH";

/** Options of the thread itself. */
export const THREAD_OPTIONS: readonly OptionSpec[] = [
  { name: "form", value: "FORM", help: "acme-29, trapezoidal-30 …; a wrong one lists all" },
  { name: "diameter", value: "D", help: "outside diameter: 24, 20mm, 0.75in" },
  { name: "pitch", value: "P", help: "pitch: 5, 4mm, 0.2in" },
  { name: "per-inch", value: "N", help: "threads per inch, instead of the pitch" },
  { name: "lead", value: "L", help: "travel for one turn, instead of the pitch" },
  { name: "starts", value: "N", help: "number of starts; 1" },
  { name: "hand", value: "right|left", help: "right" },
  { name: "class", value: "CLASS", help: "limits of a class, such as 2G; else the running fit" },
  { name: "clearance", value: "C|C..C", help: "axial running clearance in all; 0.025 to twice it" },
  { name: "units", value: "mm|in", help: "of lengths without their own, and of the answer" },
];

/** Options of measuring and cutting. */
export const WORK_OPTIONS: readonly OptionSpec[] = [
  { name: "wire", value: "W", help: "wire to measure over; else the best" },
  { name: "over-wires", value: "M", help: "a reading over wires, to work back" },
  { name: "wires-along", value: "AT=M,…", help: "readings over wires along the worn screw" },
  { name: "thickness-along", value: "AT=T,…", help: "thread thicknesses along the worn screw" },
  { name: "tool", value: "axial|square", help: "how the tool stands: to the axis, or the helix" },
  { name: "side-clearance", value: "DEG", help: "working clearance of the tool's sides; 3" },
  { name: "sine-bar", value: LENGTH, help: "between its rolls; 100 mm or 5 in" },
  { name: "pitched", value: "DEG", help: "grind with the blank nose up by so much" },
  { name: "rolled", value: "DEG", help: "grind with the blank rolled by so much" },
  { name: "chip", value: LENGTH, help: "thickest chip of a tap's tooth; 0.05 mm" },
  { name: "flutes", value: "N", help: "flutes of the tap; 4" },
  { name: "lead-in", value: "TURNS", help: "taper before each step of the tap; 2" },
  { name: "steps", value: "N", help: "steps of the tap; as many as the chip asks for" },
  { name: "length", value: LENGTH, help: "length of thread, for the slip" },
  { name: "material", value: "TEXT", help: "material as found, for the slip" },
];

/** Options of a worn screw that is to be identified. */
export const WORN_OPTIONS: readonly OptionSpec[] = [
  { name: "outside", value: "D", help: "identify: largest outside diameter found" },
  { name: "turns", value: "N", help: "identify: threads counted" },
  { name: "over", value: LENGTH, help: "identify: distance over them" },
  { name: "angle", value: "DEG", help: "identify: included angle of the flanks, if known" },
  { name: "root", value: "D", help: "identify: diameter at the root, if measured" },
  { name: "uncertainty", value: LENGTH, help: "of the diameters, 95 %; 0.05 mm" },
  { name: "over-uncertainty", value: LENGTH, help: "of the distance, 95 %; 0.2 mm" },
];

const CHOICES = { units: ["mm", "in"], hand: ["right", "left"], tool: ["axial", "square"] } as const;

/** Reads values of options; each answers undefined where the option was not given. */
export interface OptionReader {
  readonly units: Units;
  readonly length: (name: string) => Outcome<number | undefined>;
  readonly lengthText: (name: string, text: string) => Outcome<number>;
  readonly number: (name: string, rule: NumberRule) => Outcome<number | undefined>;
  readonly choice: <Name extends "hand" | "tool">(
    name: Name,
  ) => Outcome<(typeof CHOICES)[Name][number] | undefined>;
}

interface NumberRule {
  readonly isAllowed: (value: number) => boolean;
  readonly words: string;
}

export const WHOLE: NumberRule = {
  isAllowed: (value) => Number.isInteger(value) && value >= 1,
  words: "a whole number from 1 up",
};
export const POSITIVE: NumberRule = { isAllowed: (value) => value > 0, words: "a number above zero" };
export const TILT: NumberRule = {
  isAllowed: (value) => value > -60 && value < 60,
  words: "an angle in degrees between -60 and 60",
};

/** @param units what lengths without a unit of their own are in; they come out in millimetres */
export function optionReader(line: CommandLine, units: Units): OptionReader {
  const lengthText = (name: string, text: string): Outcome<number> => {
    const read = readTypedFigure(text, units);
    if (!read.ok)
      return failed(`--${name}`, read.problem.what, `Write it like 20mm, 0.75in, or in ${units}.`);
    return succeeded(toMillimetres(read.value, units));
  };
  return {
    units,
    lengthText,
    length: (name) => {
      const text = textOf(line, name);
      if (text === undefined) return succeeded(undefined);
      const read = lengthText(name, text);
      return !read.ok || read.value > 0
        ? read
        : failed(`--${name}`, "must be greater than zero", "Give the length as measured.");
    },
    number: (name, { isAllowed, words }) => {
      const text = textOf(line, name);
      if (text === undefined) return succeeded(undefined);
      const value = text.trim() === "" ? Number.NaN : Number(text);
      return Number.isFinite(value) && isAllowed(value)
        ? succeeded(value)
        : failed(`--${name}`, `"${text}" is not ${words}`, "Write it in digits, with a decimal point.");
    },
    choice: (name) => choiceOf(line, name),
  };
}

/** The value of an option that takes one of a few words. */
export function choiceOf<Name extends keyof typeof CHOICES>(
  line: CommandLine,
  name: Name,
): Outcome<(typeof CHOICES)[Name][number] | undefined> {
  const text = textOf(line, name);
  if (text === undefined) return succeeded(undefined);
  const choices: readonly (typeof CHOICES)[Name][number][] = CHOICES[name];
  const chosen = choices.find((each) => each === text);
  return chosen === undefined
    ? failed(`--${name}`, `"${text}" is none of its values`, `It takes ${choices.join(", ")}.`)
    : succeeded(chosen);
}

/** The unit written beside the length of an option: `20mm`. */
export function unitBesideOption(line: CommandLine, name: string): Units | undefined {
  const text = textOf(line, name);
  const cell = text === undefined ? undefined : readCell(text, "none");
  if (cell?.kind !== "number" || cell.unit === undefined || cell.unit === "divisions") return undefined;
  return cell.unit.base;
}

/** The pitch, in millimetres, from whichever of three options was given. */
export function pitchSaid(
  line: CommandLine,
  read: OptionReader,
  starts: number,
): Outcome<number | undefined> {
  const given = ["pitch", "per-inch", "lead"].filter((name) => textOf(line, name) !== undefined);
  if (given.length > 1)
    return failed(
      given.map((name) => `--${name}`).join(" and "),
      "they say the same thing twice",
      "Give one of --pitch, --per-inch and --lead.",
    );
  const pitch = read.length("pitch");
  if (!pitch.ok || pitch.value !== undefined) return pitch;
  const perInch = read.number("per-inch", POSITIVE);
  if (!perInch.ok) return perInch;
  if (perInch.value !== undefined) return succeeded(MILLIMETRES_PER_INCH / perInch.value);
  const lead = read.length("lead");
  return lead.ok && lead.value !== undefined ? succeeded(lead.value / starts) : lead;
}

/** Places along a screw with what was read at each: `0=25.31,150=25.22`; all in millimetres. */
export function placesSaid(
  line: CommandLine,
  read: OptionReader,
  name: string,
): Outcome<readonly { readonly position: number; readonly value: number }[]> {
  const text = textOf(line, name);
  if (text === undefined) return succeeded([]);
  const places: { position: number; value: number }[] = [];
  for (const part of text.split(/[,;]/)) {
    const [at, value, ...more] = part.split("=");
    if (at === undefined || value === undefined || more.length > 0)
      return failed(
        `--${name}`,
        `"${part.trim()}" is not a place with its reading`,
        "Write PLACE=READING, such as 0=25.31,150=25.22.",
      );
    const position = read.lengthText(name, at);
    if (!position.ok) return position;
    const reading = read.lengthText(name, value);
    if (!reading.ok) return reading;
    places.push({ position: position.value, value: reading.value });
  }
  return succeeded(places);
}

/** The forms by name, for a message. */
export const FORM_NAMES = FORMS.map(({ name }) => name).join(", ");
