import { failed, type Outcome, succeeded } from "../inspection/problem.ts";
import type { ThreadSlide } from "../inspection/threadSlide.ts";
import { toMillimetres, type Units } from "../inspection/units.ts";
import type { ThreadSaid } from "../report/thread/threadSaid.ts";
import type { ThreadForm } from "../thread/form.ts";
import { formNamed } from "../thread/forms/index.ts";
import type { Clearance } from "../thread/make/fit.ts";
import type { Held } from "../thread/make/grinding.ts";
import { type PlaceRead, placesMeasured } from "../thread/measure/placesMeasured.ts";
import { threadWear } from "../thread/measure/wear.ts";
import { type Replacement, replacementOf, type ThreadRequest } from "../thread/replacement.ts";
import type { ThreadSize } from "../thread/size.ts";
import { USUAL_CLEARANCE, usualWork } from "../thread/usualWork.ts";
import { type CommandLine, textOf } from "./command.ts";
import {
  choiceOf,
  FORM_NAMES,
  type OptionReader,
  optionReader,
  POSITIVE,
  pitchSaid,
  placesSaid,
  TILT,
  unitBesideOption,
  WHOLE,
} from "./threadOptions.ts";

/** Everything that options and file say of a replacement thread, worked out. Options stand before the file. */
export function threadSaid(line: CommandLine, slide: ThreadSlide | null): Outcome<ThreadSaid> {
  const assumed = [...overridden(line, slide)];
  const assumedOfTools: string[] = [];
  const form = formSaid(line, slide);
  if (!form.ok) return form;
  const units = unitsSaid(line, slide, form.value);
  if (!units.ok) return units;
  const read = optionReader(line, units.value.units);
  assumed.push(...units.value.assumed);
  const size = sizeSaid(line, read, slide, assumed);
  if (!size.ok) return size;
  const rest = workSaid(line, read, slide, assumed, assumedOfTools);
  if (!rest.ok) return rest;
  const tolerance = textOf(line, "class");
  const thread = replacementOf({
    form: form.value,
    size: size.value,
    ...(tolerance === undefined ? {} : { tolerance }),
    ...rest.value,
  });
  if (!thread.ok) return asOption(thread.problem.where, thread.problem);
  const wear = wearSaid(line, read, slide, thread.value);
  if (!wear.ok) return wear;
  const length = read.length("length");
  if (!length.ok) return length;
  return succeeded({
    thread: thread.value,
    units: units.value.units,
    wear: wear.value,
    slide: slide?.name ?? null,
    length: length.value ?? null,
    material: textOf(line, "material") ?? null,
    holdsLoad: slide?.holdsLoad === true,
    assumed,
    assumedOfTools,
  });
}

/** A sentence for each option that stands before what the file says. */
function overridden(line: CommandLine, slide: ThreadSlide | null): readonly string[] {
  const screw = slide?.screw;
  const said = [
    ["form", "form", screw?.form],
    ["diameter", "diameter", screw?.nominalDiameter],
    ["pitch", "pitch", screw?.lead],
    ["per-inch", "pitch", screw?.lead],
    ["lead", "lead", screw?.lead],
    ["starts", "number of starts", screw?.starts],
    ["hand", "hand", screw?.hand],
    ["clearance", "running clearance", slide?.runningClearance],
    ["units", "unit of lengths", slide?.units],
  ] as const;
  return said.flatMap(([option, name, ofFile]) => {
    const text = textOf(line, option);
    return text === undefined || ofFile === undefined || text === String(ofFile)
      ? []
      : [`The ${name} is as the command says, --${option} ${text}, and not as the file does.`];
  });
}

function formSaid(line: CommandLine, slide: ThreadSlide | null): Outcome<ThreadForm> {
  const name = textOf(line, "form") ?? slide?.screw?.form;
  if (name === undefined)
    return failed(
      "--form",
      "the thread form is missing",
      `Give one of ${FORM_NAMES}; or measure the worn screw and give --outside, --turns and --over.`,
    );
  const form = formNamed(name);
  return form.ok ? form : failed("--form", form.problem.what, form.problem.cure);
}

interface UnitsFound {
  readonly units: Units;
  readonly assumed: readonly string[];
}

/** The unit stated, else the file's, else the one beside the diameter, else the one that the form is made in. */
function unitsSaid(line: CommandLine, slide: ThreadSlide | null, form: ThreadForm): Outcome<UnitsFound> {
  const stated = choiceOf(line, "units");
  if (!stated.ok) return stated;
  const known = stated.value ?? slide?.units ?? unitBesideOption(line, "diameter");
  if (known !== undefined) return succeeded({ units: known, assumed: [] });
  const isSquareInInches = form.standard === null && textOf(line, "per-inch") !== undefined;
  const units = isSquareInInches ? "in" : form.system;
  return succeeded({
    units,
    assumed: [
      `Lengths are in ${units === "in" ? "inches" : "millimetres"}, as ${form.words} threads are made.`,
    ],
  });
}

function sizeSaid(
  line: CommandLine,
  read: OptionReader,
  slide: ThreadSlide | null,
  assumed: string[],
): Outcome<ThreadSize> {
  const starts = read.number("starts", WHOLE);
  if (!starts.ok) return starts;
  const count = starts.value ?? slide?.screw?.starts;
  if (count === undefined) assumed.push("The screw has a single start.");
  const hand = read.choice("hand");
  if (!hand.ok) return hand;
  const turned = hand.value ?? slide?.screw?.hand;
  if (turned === undefined) assumed.push("The thread is right-hand.");
  const diameter = read.length("diameter");
  if (!diameter.ok) return diameter;
  const pitch = pitchSaid(line, read, count ?? 1);
  if (!pitch.ok) return pitch;
  const ofFile = (length: number | undefined): number | undefined =>
    length === undefined || slide === null ? undefined : toMillimetres(length, slide.units);
  const lead = ofFile(slide?.screw?.lead);
  const found = {
    diameter: diameter.value ?? ofFile(slide?.screw?.nominalDiameter),
    pitch: pitch.value ?? (lead === undefined ? undefined : lead / (count ?? 1)),
  };
  if (found.diameter === undefined)
    return failed("--diameter", "the outside diameter is missing", "Give it, such as --diameter 24mm.");
  if (found.pitch === undefined)
    return failed("--pitch", "the pitch is missing", "Give --pitch, --per-inch or --lead.");
  return succeeded({
    diameter: found.diameter,
    pitch: found.pitch,
    starts: count ?? 1,
    hand: turned ?? "right",
  });
}

type Work = Omit<ThreadRequest, "form" | "size" | "tolerance">;

/** How the thread is fitted, measured and cut. */
function workSaid(
  line: CommandLine,
  read: OptionReader,
  slide: ThreadSlide | null,
  assumed: string[],
  assumedOfTools: string[],
): Outcome<Work> {
  const usual = usualWork(read.units);
  const clearance = clearanceSaid(line, read, slide, assumed);
  if (!clearance.ok) return clearance;
  const stands = read.choice("tool");
  if (!stands.ok) return stands;
  const numbers = {
    wire: read.length("wire"),
    overWires: read.length("over-wires"),
    workingClearance: read.number("side-clearance", TILT),
    sineBar: read.length("sine-bar"),
    chip: read.length("chip"),
    flutes: read.number("flutes", WHOLE),
    leadIn: read.number("lead-in", POSITIVE),
    steps: read.number("steps", WHOLE),
    pitched: read.number("pitched", TILT),
    rolled: read.number("rolled", TILT),
  };
  for (const each of Object.values(numbers)) if (!each.ok) return each;
  const value = (name: keyof typeof numbers): number | undefined => {
    const each = numbers[name];
    return each.ok ? each.value : undefined;
  };
  const orDefault = (name: keyof typeof numbers, fallback: number, words: string): number => {
    const given = value(name);
    if (given === undefined) (name === "workingClearance" ? assumed : assumedOfTools).push(words);
    return given ?? fallback;
  };
  if (stands.value === undefined) assumed.push("The tool stands square to the axis of the screw.");
  const [wire, overWires, steps] = [value("wire"), value("overWires"), value("steps")];
  return succeeded({
    clearance: clearance.value,
    toolStands: stands.value ?? usual.toolStands,
    workingClearance: orDefault(
      "workingClearance",
      usual.workingClearance,
      `The sides of the tool have ${usual.workingClearance}° of working clearance beyond the lead angle.`,
    ),
    sineBar: orDefault(
      "sineBar",
      usual.sineBar,
      `The sine bar is ${read.units === "mm" ? "100 mm" : "5 in"} long.`,
    ),
    ...heldSaid(value("pitched"), value("rolled")),
    ...(wire === undefined ? {} : { wire }),
    ...(overWires === undefined ? {} : { overWires }),
    tap: {
      chip: orDefault("chip", usual.tap.chip, "A tooth of the tap takes a chip of at most 0.05 mm."),
      flutes: orDefault("flutes", usual.tap.flutes, `The tap has ${usual.tap.flutes} flutes.`),
      leadInTurns: orDefault(
        "leadIn",
        usual.tap.leadInTurns,
        `Each step of the tap has ${usual.tap.leadInTurns} turns of lead-in taper, the last one ${usual.tap.fullTurns} turns of full form.`,
      ),
      fullTurns: usual.tap.fullTurns,
      ...(steps === undefined ? {} : { steps }),
    },
  });
}

function heldSaid(pitched: number | undefined, rolled: number | undefined): { readonly held?: Held } {
  return pitched === undefined && rolled === undefined
    ? {}
    : { held: { pitched: pitched ?? 0, rolled: rolled ?? 0 } };
}

function clearanceSaid(
  line: CommandLine,
  read: OptionReader,
  slide: ThreadSlide | null,
  assumed: string[],
): Outcome<Clearance> {
  const text = textOf(line, "clearance");
  if (text !== undefined) {
    const [from, to, ...more] = text.split("..").map((part) => read.lengthText("clearance", part));
    if (from === undefined || more.length > 0)
      return failed("--clearance", `"${text}" is no clearance`, "Give it as 0.025 or 0.02..0.05.");
    if (!from.ok) return from;
    if (to !== undefined && !to.ok) return to;
    if (to === undefined) assumed.push("The running clearance may be up to twice the least.");
    return succeeded({ from: from.value, to: to?.value ?? 2 * from.value });
  }
  const ofFile = slide?.runningClearance;
  const least = ofFile === undefined || slide === null ? USUAL_CLEARANCE : toMillimetres(ofFile, slide.units);
  assumed.push(
    ofFile === undefined
      ? "The running clearance is 0.025 mm (0.001 in) along the screw, and up to twice that."
      : "The running clearance is the slide's, and up to twice that.",
  );
  return succeeded({ from: least, to: 2 * least });
}

/** The worn screw as it was measured at several places, if it was: by the options, else by the file. */
function wearSaid(
  line: CommandLine,
  read: OptionReader,
  slide: ThreadSlide | null,
  { form, size, wires }: Replacement,
): Outcome<ThreadSaid["wear"]> {
  const overWires = placesSaid(line, read, "wires-along");
  if (!overWires.ok) return overWires;
  const thicknesses = placesSaid(line, read, "thickness-along");
  if (!thicknesses.ok) return thicknesses;
  const ofOptions: readonly PlaceRead[] = [
    ...overWires.value.map(({ position, value }) => ({ position, overWires: value, wire: wires?.chosen })),
    ...thicknesses.value.map(({ position, value }) => ({ position, thickness: value })),
  ];
  const isOfFile = ofOptions.length === 0;
  const reads = isOfFile ? placesOf(slide) : ofOptions;
  if (reads.length === 0) return succeeded(null);
  const places = placesMeasured(form, size, reads);
  if (places.ok) return succeeded(threadWear(size.pitch, places.value));
  const { where, what, cure } = places.problem;
  const option = overWires.value.length > 0 ? "--wires-along" : "--thickness-along";
  return failed(isOfFile ? where : option, what, cure);
}

function placesOf(slide: ThreadSlide | null): readonly PlaceRead[] {
  if (slide === null) return [];
  const inMillimetres = (length: number | undefined): number | undefined =>
    length === undefined ? undefined : toMillimetres(length, slide.units);
  return slide.measured.map(({ position, thickness, overWires, wire }) => ({
    position: toMillimetres(position, slide.units),
    thickness: inMillimetres(thickness),
    overWires: inMillimetres(overWires),
    wire: inMillimetres(wire),
  }));
}

/** A problem of the thread as a problem of the option that says it. */
function asOption(where: string, problem: { readonly what: string; readonly cure: string }): Outcome<never> {
  return failed(where === "" ? "" : `--${where}`, problem.what, problem.cure);
}
