import { assessSurvey } from "../../analysis/assess.ts";
import type { Assessment } from "../../analysis/assessment.ts";
import { failed, type Outcome, type Problem, succeeded } from "../../inspection/problem.ts";
import { WHOLE } from "../../intake/missing.ts";
import { profilePicture } from "../../picture/profilePicture.ts";
import { profileSvg } from "../../picture/profileSvg.ts";
import { assessmentReport } from "../../report/assessment/assessmentReport.ts";
import { profileCsv } from "../../report/profileCsv.ts";
import { resultOf } from "../../report/result.ts";
import { terminalText } from "../../report/terminal.ts";
import { type Command, type CommandLine, type ExitCode, textOf } from "../command.ts";
import type { SurveyRead } from "../fileRead.ts";
import { fileReader } from "../fileReader.ts";
import { LOG_OPTIONS } from "../logOptions.ts";
import { complain, tellFault, write, writeOut } from "../output.ts";
import { OVERRIDES } from "../overrides.ts";
import { sourceName } from "../source.ts";

const BETWEEN_SURVEYS = "─".repeat(80);

/** The assessment of every survey of every file, in words or as JSON. */
export const assess: Command = {
  name: "assess",
  operands: "FILE…",
  summary: "what to do, from inspections or CSV logs; - is standard input",
  options: [
    { name: "json", help: "one JSON object per survey, one per line" },
    { name: "survey", value: "ID", help: "only this survey" },
    {
      name: "report",
      value: "OUT.html",
      help: "the report on the one survey assessed, to print or to pass on",
    },
    { name: "picture", value: "OUT.svg", help: "draw the profile of the one survey assessed" },
    { name: "profile", value: "OUT.csv", help: "the profile of the one survey assessed, as CSV" },
    { name: "slide", value: "SLIDE.json", help: "the slide that a CSV's readings were taken on" },
    ...LOG_OPTIONS,
    ...OVERRIDES,
  ],
  run,
};

/** One survey to assess. */
interface Task extends SurveyRead {
  readonly file: string;
}

async function run(line: CommandLine): Promise<ExitCode> {
  const reader = await fileReader(line, WHOLE);
  if (!reader.ok) return refuse(reader.problem);
  if (line.operands.length === 0) {
    return refuse({ where: "assess", what: "no file was named", cure: "Name inspections or CSV logs." });
  }
  let exitCode: ExitCode = 0;
  const tasks: Task[] = [];
  for (const file of line.operands) {
    const read = await reader.value(file);
    const surveys = read.ok ? chosen(read.value.surveys, textOf(line, "survey")) : read;
    for (const problem of read.ok ? read.value.refused : []) exitCode = refuse(problem, file);
    if (surveys.ok) tasks.push(...surveys.value.map((survey) => ({ ...survey, file })));
    else exitCode = refuse(surveys.problem, file);
  }
  const outputs = outputsOf(line);
  const [single] = outputs;
  if (single !== undefined && tasks.length > 1) return refuse(severalFor(single.option, tasks));
  let faulty = false;
  for (const [index, task] of tasks.entries()) {
    try {
      const done = await perform(task, index, line.options.json === true, outputs);
      if (!done.ok) exitCode = refuse(done.problem, task.file);
    } catch (fault) {
      // What fails for one file says nothing of the others.
      tellFault(fault, sourceName(task.file));
      faulty = true;
    }
  }
  return faulty ? 1 : exitCode;
}

/** The surveys asked for: the one of that id, or all. */
function chosen(surveys: readonly SurveyRead[], id: string | undefined): Outcome<readonly SurveyRead[]> {
  if (surveys.length === 0) return failed("surveys", "there is no survey in it", "Add readings to it first.");
  const found = id === undefined ? surveys : surveys.filter(({ survey }) => survey === id);
  const known = surveys.map(({ survey }) => survey).join(", ");
  return found.length === 0
    ? failed("", `there is no survey "${id}"`, `Its surveys: ${known}.`)
    : succeeded(found);
}

/** A file that is made of an assessment where its option names one. */
interface Output {
  readonly option: string;
  readonly file: string;
  readonly contents: (task: Task, assessment: Assessment) => string;
}

const OUTPUTS: readonly Omit<Output, "file">[] = [
  { option: "report", contents: ({ inspection }, assessment) => assessmentReport(inspection, assessment) },
  {
    option: "picture",
    contents: ({ inspection }, assessment) => profileSvg(profilePicture(assessment, inspection.slide.units)),
  },
  {
    option: "profile",
    contents: ({ inspection }, assessment) => profileCsv(assessment, inspection.slide.units, "."),
  },
];

function outputsOf(line: CommandLine): readonly Output[] {
  return OUTPUTS.flatMap((output) => {
    const file = textOf(line, output.option);
    return file === undefined ? [] : [{ ...output, file }];
  });
}

/** Assesses a survey, tells the assessment and makes the files that are wanted of it. */
async function perform(
  task: Task,
  index: number,
  asJson: boolean,
  outputs: readonly Output[],
): Promise<Outcome<void>> {
  const assessed = assessmentOf(task);
  if (!assessed.ok) return assessed;
  await tell(task, assessed.value, asJson, index);
  for (const { file, contents } of outputs) {
    const written = await writeOut(file, contents(task, assessed.value));
    if (!written.ok) return written;
  }
  return succeeded(undefined);
}

/** The assessment, with what the command line and the way of reading assumed told first. */
function assessmentOf({ inspection, survey, assumed }: Task): Outcome<Assessment> {
  const assessed = assessSurvey(inspection, survey);
  return assessed.ok
    ? succeeded({ ...assessed.value, assumed: [...assumed, ...assessed.value.assumed] })
    : assessed;
}

function tell(task: Task, assessment: Assessment, asJson: boolean, index: number): Promise<void> {
  if (asJson) return write(`${JSON.stringify(resultOf(task.file, assessment, task.inspection))}\n`);
  const text = terminalText(sourceName(task.file), assessment, task.inspection);
  return write(index === 0 ? text : `\n${BETWEEN_SURVEYS}\n\n${text}`);
}

function severalFor(option: string, tasks: readonly Task[]): Problem {
  const surveys = tasks.map(({ file, survey }) => `${survey} of ${sourceName(file)}`).join(", ");
  return {
    where: `--${option}`,
    what: `there is more than one survey for it (${surveys})`,
    cure: "Name one file, and one of its surveys with --survey ID.",
  };
}

function refuse(problem: Problem, file?: string): ExitCode {
  complain(problem, file === undefined ? undefined : sourceName(file));
  return 2;
}
