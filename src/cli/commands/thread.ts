import { failed, type Outcome, type Problem, succeeded } from "../../inspection/problem.ts";
import { openThreadSlide, type ThreadSlide } from "../../inspection/threadSlide.ts";
import { fileKindOf } from "../../intake/fileKind.ts";
import { threadPicture } from "../../picture/thread/threadPicture.ts";
import { threadSvg } from "../../picture/thread/threadSvg.ts";
import { identificationResult, identificationText } from "../../report/thread/identificationWords.ts";
import { threadResult } from "../../report/thread/threadResult.ts";
import type { ThreadSaid } from "../../report/thread/threadSaid.ts";
import { threadSlip } from "../../report/thread/threadSlip.ts";
import { threadText } from "../../report/thread/threadText.ts";
import { type Command, type CommandLine, type ExitCode, textOf } from "../command.ts";
import { asksToIdentify, identifySaid } from "../identifyRequest.ts";
import { printProblem, write, writeOut } from "../output.ts";
import { readSource, sourceName } from "../source.ts";
import { THREAD_OPTIONS, WORK_OPTIONS, WORN_OPTIONS } from "../threadOptions.ts";
import { threadSaid } from "../threadRequest.ts";

/** A replacement thread: every dimension to cut and check screw and nut, or what a worn one is. */
export const thread: Command = {
  name: "thread",
  operands: "[SLIDE.json]",
  summary: "a replacement thread: its dimensions and how to check it",
  options: [
    { name: "json", help: "one JSON object" },
    { name: "drawing", value: "OUT.svg", help: "screw and nut to scale, with a wire in place" },
    { name: "sheet", value: "OUT.html", help: "the slip for the lathe, one page to print" },
    ...THREAD_OPTIONS,
    ...WORK_OPTIONS,
    ...WORN_OPTIONS,
  ],
  run,
};

async function run(line: CommandLine): Promise<ExitCode> {
  if (asksToIdentify(line)) return identified(line);
  const slide = await slideSaid(line);
  if (!slide.ok) return refuse(slide.problem);
  const said = threadSaid(line, slide.value);
  if (!said.ok) return refuse(said.problem);
  await write(
    line.options.json === true ? `${JSON.stringify(threadResult(said.value))}\n` : threadText(said.value),
  );
  return writeFiles(line, said.value);
}

/** The files that can be made of a thread, by the options that name them. */
const OUTPUTS: readonly (readonly [option: string, contents: (said: ThreadSaid) => string])[] = [
  ["drawing", ({ thread: made, units }) => threadSvg(threadPicture(made, units))],
  ["sheet", threadSlip],
];

async function writeFiles(line: CommandLine, said: ThreadSaid): Promise<ExitCode> {
  let exitCode: ExitCode = 0;
  for (const [option, contents] of OUTPUTS) {
    const file = textOf(line, option);
    const written = file === undefined ? succeeded(undefined) : await writeOut(file, contents(said));
    if (!written.ok) exitCode = refuse(written.problem);
  }
  return exitCode;
}

async function identified(line: CommandLine): Promise<ExitCode> {
  const said = identifySaid(line);
  if (!said.ok) return refuse(said.problem);
  const { found, units, assumed } = said.value;
  await write(
    line.options.json === true
      ? `${JSON.stringify(identificationResult(found, units, assumed))}\n`
      : identificationText(found, units, assumed),
  );
  return 0;
}

async function slideSaid({ operands }: CommandLine): Promise<Outcome<ThreadSlide | null>> {
  const [file, another] = operands;
  if (another !== undefined) return failed(another, "this is a second slide", "Name one slide at a time.");
  if (file === undefined) return succeeded(null);
  const bytes = await readSource(file);
  const found = bytes.ok ? fileKindOf(bytes.value) : bytes;
  if (found.ok && found.value.kind === "log")
    return failed(
      sourceName(file),
      "this is a log or another text, not an inspection",
      "Name an inspection file (JSON), or say the thread with options.",
    );
  const slide = found.ok ? openThreadSlide(found.value.text) : found;
  if (slide.ok) return slide;
  const { where, what, cure } = slide.problem;
  return failed([sourceName(file), where].filter((place) => place !== "").join(": "), what, cure);
}

function refuse(problem: Problem): ExitCode {
  printProblem(problem);
  return 2;
}
