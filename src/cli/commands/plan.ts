import { type PlannableSlide, readPlannableSlide } from "../../inspection/plannableSlide.ts";
import { failed, type Outcome, type Problem, succeeded } from "../../inspection/problem.ts";
import { missingFromPlan } from "../../intake/missing.ts";
import { measuringPlan, type Plan, type PlanOptions } from "../../intake/plan/measuringPlan.ts";
import { combine } from "../../intake/statements.ts";
import { logSheet } from "../../report/plan/logSheet.ts";
import { type LostMotionMethod, lostMotionMethod, METHODS } from "../../report/plan/method.ts";
import { planText } from "../../report/plan/planText.ts";
import { type Command, type CommandLine, type ExitCode, textOf } from "../command.ts";
import { readSlide } from "../fileReader.ts";
import { printProblem, write, writeOut } from "../output.ts";
import { type CommandStatement, OVERRIDES, optionsFor, readOverrides } from "../overrides.ts";

const DEFAULT_METHOD = "push-pull";
/** The options of an assessment that a plan has a use for. */
const SLIDE_OPTIONS = ["units", "lead", "travel", "engaged", "holds-load", "method"];

/** Where to take readings along a slide, and the sheet to write them on. */
export const plan: Command = {
  name: "plan",
  operands: "SLIDE.json",
  summary: "which stations to read, and the sheet to write on",
  options: [
    { name: "stations", value: "N", help: "so many stations, instead of as many as needed" },
    { name: "sheet", value: "OUT.html", help: "the log sheet, to print on A4 or US Letter" },
    { name: "json", help: "the plan as one JSON object" },
    ...OVERRIDES.filter(({ name }) => SLIDE_OPTIONS.includes(name)),
  ],
  run,
};

/** A plan with the slide that it is for. */
interface Planned {
  readonly slide: PlannableSlide;
  readonly plan: Plan;
  readonly method: LostMotionMethod;
  /** What options override and defaults fill in, in sentences. */
  readonly assumed: readonly string[];
}

async function run(line: CommandLine): Promise<ExitCode> {
  const planned = await planFor(line);
  if (!planned.ok) return refuse(planned.problem);
  const { slide, plan, method, assumed } = planned.value;
  const file = textOf(line, "sheet");
  const written =
    file === undefined ? succeeded(undefined) : await writeOut(file, logSheet(slide, plan, method));
  await write(
    line.options.json === true
      ? `${JSON.stringify({ method, ...plan, assumed: [...assumed, ...plan.assumed] })}\n`
      : planText(slide, plan, method, assumed),
  );
  return written.ok ? 0 : refuse(written.problem);
}

async function planFor(line: CommandLine): Promise<Outcome<Planned>> {
  const stated = readOverrides(line);
  if (!stated.ok) return stated;
  const method = lostMotionMethod(stated.value.method ?? DEFAULT_METHOD);
  if (!method.ok) return failed("--method", method.problem.what, method.problem.cure);
  const slide = await slideFor(line, stated.value);
  if (!slide.ok) return slide;
  const options = stationsAsked(line);
  if (!options.ok) return options;
  const made = measuringPlan(slide.value.slide, options.value);
  if (!made.ok) return failed("--stations", made.problem.what, made.problem.cure);
  const assumed =
    stated.value.method === undefined ? [`Readings are taken ${METHODS[DEFAULT_METHOD].name}.`] : [];
  return succeeded({
    slide: slide.value.slide,
    plan: made.value,
    method: method.value,
    assumed: [...slide.value.overridden, ...assumed],
  });
}

function stationsAsked(line: CommandLine): Outcome<PlanOptions> {
  const text = textOf(line, "stations");
  if (text === undefined) return succeeded({});
  return /^\d+$/.test(text)
    ? succeeded({ stations: Number(text) })
    : failed("--stations", `"${text}" is not a whole number`, "Give how many stations to read, such as 12.");
}

interface StatedSlide {
  readonly slide: PlannableSlide;
  readonly overridden: readonly string[];
}

/** The slide in the file named, if any, with the options in their places. */
async function slideFor(line: CommandLine, command: CommandStatement): Promise<Outcome<StatedSlide>> {
  const [file, another] = line.operands;
  if (another !== undefined) {
    return failed(another, "this is a second slide", "Plan for one slide at a time.");
  }
  const stated = file === undefined ? succeeded(undefined) : await readSlide(file);
  if (!stated.ok) return stated;
  const statements = stated.value === undefined ? [command] : [stated.value, command];
  const { slide, overridden } = combine(statements, command.units ?? stated.value?.units);
  const missing = missingFromPlan(
    slide,
    (keys) => `Give ${optionsFor(keys)}${file === undefined ? ", or name a slide's file" : ""}.`,
  );
  if (missing !== undefined) return { ok: false, problem: missing };
  const read = readPlannableSlide(slide);
  return read.ok ? succeeded({ slide: read.value, overridden }) : read;
}

function refuse(problem: Problem): ExitCode {
  printProblem(problem);
  return 2;
}
