import { beforeAndAfter } from "../../analysis/beforeAndAfter.ts";
import { mergeInspections } from "../../inspection/mergeInspections.ts";
import { failed, type Outcome, type Problem, succeeded } from "../../inspection/problem.ts";
import type { Inspection } from "../../inspection/schema.ts";
import { WHOLE } from "../../intake/missing.ts";
import { comparisonPicture } from "../../picture/comparison/comparisonPicture.ts";
import { comparisonSvg } from "../../picture/comparison/comparisonSvg.ts";
import { type Compared, comparedOf } from "../../report/comparison/compared.ts";
import { comparisonReport } from "../../report/comparison/comparisonReport.ts";
import { comparisonResult } from "../../report/comparison/result.ts";
import { comparisonText } from "../../report/comparison/terminal.ts";
import { type Command, type CommandLine, type ExitCode, textOf } from "../command.ts";
import type { FileRead } from "../fileRead.ts";
import { fileReader } from "../fileReader.ts";
import { LOG_OPTIONS } from "../logOptions.ts";
import { printProblem, write, writeOut } from "../output.ts";
import { OVERRIDES } from "../overrides.ts";
import { sourceName } from "../source.ts";

/** Two surveys of one slide against each other, and the trend since its last repair. */
export const compare: Command = {
  name: "compare",
  operands: "FILE…",
  summary: "two surveys of a slide, before and after, and running in",
  options: [
    { name: "from", value: "ID", help: "the earlier survey; else the last before the repair" },
    { name: "to", value: "ID", help: "the later survey; else the latest" },
    { name: "json", help: "one JSON object" },
    { name: "report", value: "OUT.html", help: "the report on both surveys, to print" },
    { name: "picture", value: "OUT.svg", help: "draw both profiles and their difference" },
    { name: "slide", value: "SLIDE.json", help: "the slide that CSVs' readings were taken on" },
    ...LOG_OPTIONS,
    ...OVERRIDES,
  ],
  run,
};

/** The surveys of one slide, with what options and slide file override. */
interface Gathered {
  readonly inspection: Inspection;
  readonly assumed: readonly string[];
}

async function run(line: CommandLine): Promise<ExitCode> {
  const { read, refused } = await readAll(line);
  for (const { problem, file } of refused) printProblem(problem, file);
  const compared = read.ok ? comparedIn(read.value, line) : read;
  if (!compared.ok) {
    printProblem(compared.problem);
    return 2;
  }
  const { inspection, comparison, history, assumed } = compared.value;
  const file = line.operands.map(sourceName).join(", ");
  await write(
    line.options.json === true
      ? `${JSON.stringify(comparisonResult(file, comparison, "trend" in history ? history : null, inspection, assumed))}\n`
      : comparisonText(file, compared.value),
  );
  const written = await writeFiles(compared.value, line);
  return written && refused.length === 0 ? 0 : 2;
}

/** The files that can be made of a comparison, by the options that name them. */
const OUTPUTS: readonly (readonly [option: string, contents: (compared: Compared) => string])[] = [
  ["report", comparisonReport],
  [
    "picture",
    ({ comparison, inspection }) => comparisonSvg(comparisonPicture(comparison, inspection.slide.units)),
  ],
];

/** Writes the files asked for and prints what could not be written. Returns whether all were written. */
async function writeFiles(compared: Compared, line: CommandLine): Promise<boolean> {
  let all = true;
  for (const [option, contents] of OUTPUTS) {
    const file = textOf(line, option);
    if (file === undefined) continue;
    const written = await writeOut(file, contents(compared));
    if (!written.ok) printProblem(written.problem);
    all &&= written.ok;
  }
  return all;
}

interface Refused {
  readonly problem: Problem;
  readonly file: string;
}

/** Reads the surveys of all files as surveys of one slide, and the rows of logs that could not be read. */
async function readAll(
  line: CommandLine,
): Promise<{ readonly read: Outcome<Gathered>; readonly refused: readonly Refused[] }> {
  const refused: Refused[] = [];
  const reader = await fileReader(line, WHOLE);
  if (!reader.ok) return { read: reader, refused };
  const files: FileRead[] = [];
  for (const file of line.operands) {
    const read = await reader.value(file);
    if (!read.ok) {
      const { where, what, cure } = read.problem;
      const place = [sourceName(file), where].filter((part) => part !== "").join(": ");
      return { read: failed(place, what, cure), refused };
    }
    refused.push(...read.value.refused.map((problem) => ({ problem, file: sourceName(file) })));
    files.push(read.value);
  }
  const [first, ...others] = files;
  if (first === undefined) {
    return { read: failed("compare", "no file was named", "Name an inspection with both surveys."), refused };
  }
  const inspection = mergeInspections([first.inspection, ...others.map((each) => each.inspection)]);
  const assumed = [...new Set(files.flatMap(({ surveys }) => surveys.flatMap((each) => each.assumed)))];
  return { read: inspection.ok ? succeeded({ inspection: inspection.value, assumed }) : inspection, refused };
}

function comparedIn({ inspection, assumed }: Gathered, line: CommandLine): Outcome<Compared> {
  const found = beforeAndAfter(inspection, { from: textOf(line, "from"), to: textOf(line, "to") });
  return found.ok ? succeeded(comparedOf(inspection, found.value, assumed)) : found;
}
