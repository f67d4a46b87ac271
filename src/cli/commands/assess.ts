import type { Assessment } from "../../analysis/assessment.ts";
import { type FileProblem, type Outcome, type Problem, succeeded } from "../../inspection/problem.ts";
import { WHOLE } from "../../intake/missing.ts";
import { profilePicture } from "../../picture/profilePicture.ts";
import { profileSvg } from "../../picture/profileSvg.ts";
import { assessmentReport } from "../../report/assessment/assessmentReport.ts";
import { overviewPage } from "../../report/overview/overviewPage.ts";
import { overviewText } from "../../report/overview/overviewText.ts";
import type { SlideOverview } from "../../report/overview/slideOverview.ts";
import { profileCsv } from "../../report/profileCsv.ts";
import { resultOf } from "../../report/result.ts";
import { terminalText } from "../../report/terminal.ts";
import type { Reply } from "../assessing/assessTask.ts";
import { assessInOrder } from "../assessing/inOrder.ts";
import { readTasks, type Task } from "../assessing/task.ts";
import { type Command, type CommandLine, type ExitCode, textOf } from "../command.ts";
import { fileReader } from "../fileReader.ts";
import { LOG_OPTIONS } from "../logOptions.ts";
import { filesNamed } from "../operands.ts";
import { printFault, printProblem, write, writeOut } from "../output.ts";
import { OVERRIDES } from "../overrides.ts";
import { sourceName } from "../source.ts";

/** The problem of a survey at which the program failed. */
const FAULT: Problem = {
  where: "",
  what: "the program failed at it",
  cure: "This is a fault of the program; standard error shows it.",
};
const BETWEEN_SURVEYS = "─".repeat(80);

/** The assessment of every survey of every file, in words or as JSON; of folders, a line for each slide. */
export const assess: Command = {
  name: "assess",
  operands: "FILE…|FOLDER",
  summary: "what to do, from inspections or logs; - is standard input",
  options: [
    { name: "json", help: "one JSON object per survey, one per line" },
    { name: "survey", value: "ID", help: "only this survey" },
    {
      name: "report",
      value: "OUT.html",
      help: "the report on the one survey assessed, to print",
    },
    { name: "overview", value: "OUT.html", help: "a table of the slides, the worst first" },
    { name: "picture", value: "OUT.svg", help: "draw the profile of the one survey assessed" },
    { name: "profile", value: "OUT.csv", help: "the profile of the one survey assessed, as CSV" },
    { name: "slide", value: "SLIDE.json", help: "the slide that a CSV's readings were taken on" },
    ...LOG_OPTIONS,
    ...OVERRIDES,
  ],
  run,
};

/** How assessments are printed: each as JSON or in words, or all together, a line for each slide. */
type OutputMode = "json" | "words" | "lines";

async function run(line: CommandLine): Promise<ExitCode> {
  const reader = await fileReader(line, WHOLE);
  if (!reader.ok) return refuse(reader.problem);
  if (line.operands.length === 0) {
    return refuse({ where: "assess", what: "no file was named", cure: "Name inspections or CSV logs." });
  }
  const named = await filesNamed(line.operands);
  const mode: OutputMode = line.options.json === true ? "json" : named.anyFolder ? "lines" : "words";
  const read = await readTasks(named.files, reader.value, textOf(line, "survey"));
  for (const { problem, file } of [...named.unread, ...read.unread]) printProblem(problem, sourceName(file));
  const tasks = mode === "lines" ? read.tasks.filter(({ standsForSlide }) => standsForSlide) : read.tasks;
  const outputs = outputsOf(line);
  const [single] = outputs;
  if (single !== undefined && tasks.length > 1) return refuse(severalFor(single.option, tasks));
  const overview = textOf(line, "overview");
  const isKept = mode === "lines" || single !== undefined || overview !== undefined;
  const done = await assessAll(tasks, mode, isKept);
  const unread = [...named.unread, ...read.unread, ...done.unread];
  if (mode === "lines" && done.slides.length > 0) await write(overviewText(done.slides, unread));
  const written = await writeFiles(filesOf(done.slides, unread, outputs, overview));
  if (done.faulty) return 1;
  return written && unread.length === 0 ? 0 : 2;
}

interface Done {
  /** The surveys that represent their slides; empty where nothing is made of them afterwards. */
  readonly slides: readonly SlideOverview[];
  readonly unread: readonly FileProblem[];
  /** Whether the program failed at any. */
  readonly faulty: boolean;
}

/** Assesses every survey and prints each as soon as those before it are printed. */
async function assessAll(tasks: readonly Task[], mode: OutputMode, isKept: boolean): Promise<Done> {
  const slides: SlideOverview[] = [];
  const unread: FileProblem[] = [];
  let printed = 0;
  let faulty = false;
  for await (const [task, reply] of assessInOrder(tasks)) {
    const { file, inspection, standsForSlide } = task;
    try {
      const assessed = assessedOf(task, reply);
      if (!assessed.ok) {
        printProblem(assessed.problem, sourceName(file));
        unread.push({ file, problem: assessed.problem });
        continue;
      }
      const slide = { file, inspection, assessment: assessed.value };
      if (mode !== "lines") await print(slide, mode, printed++);
      if (standsForSlide && isKept) slides.push(slide);
    } catch (fault) {
      printFault(fault, sourceName(file));
      unread.push({ file, problem: FAULT });
      faulty = true;
    }
  }
  return { slides, unread, faulty };
}

/** The assessment, with what the command line and the reading of a log assumed first. Throws the fault of a reply. */
function assessedOf({ assumed }: Task, reply: Reply): Outcome<Assessment> {
  if ("fault" in reply) throw reply.fault;
  if (!reply.ok) return reply;
  return succeeded({ ...reply.value, assumed: [...assumed, ...reply.value.assumed] });
}

function print({ file, assessment, inspection }: SlideOverview, as: "json" | "words", index: number) {
  if (as === "json") return write(`${JSON.stringify(resultOf(file, assessment, inspection))}\n`);
  const text = terminalText(sourceName(file), assessment, inspection);
  return write(index === 0 ? text : `\n${BETWEEN_SURVEYS}\n\n${text}`);
}

/** A file made of one assessment, named by an option. */
interface Output {
  readonly option: string;
  readonly file: string;
  readonly contents: (slide: SlideOverview, assessment: Assessment) => string;
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

/** The files to write of what was assessed; none where nothing was. */
function filesOf(
  slides: readonly SlideOverview[],
  unread: readonly FileProblem[],
  outputs: readonly Output[],
  overview: string | undefined,
): readonly (readonly [file: string, contents: string])[] {
  const [slide] = slides;
  if (slide === undefined) return [];
  return [
    ...outputs.map(({ file, contents }) => [file, contents(slide, slide.assessment)] as const),
    ...(overview === undefined ? [] : [[overview, overviewPage(slides, unread)] as const]),
  ];
}

/** Writes the files and prints what could not be written. Returns whether all were written. */
async function writeFiles(files: readonly (readonly [file: string, contents: string])[]): Promise<boolean> {
  let all = true;
  for (const [file, contents] of files) {
    const written = await writeOut(file, contents);
    if (!written.ok) printProblem(written.problem);
    all &&= written.ok;
  }
  return all;
}

function severalFor(option: string, tasks: readonly Task[]): Problem {
  const surveys = tasks.map(({ file, survey }) => `${survey} of ${sourceName(file)}`).join(", ");
  return {
    where: `--${option}`,
    what: `there is more than one survey for it (${surveys})`,
    cure: "Name one file, and one of its surveys with --survey ID.",
  };
}

function refuse(problem: Problem): ExitCode {
  printProblem(problem);
  return 2;
}
