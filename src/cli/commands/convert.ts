import { extname } from "node:path";
import { isDeepStrictEqual } from "node:util";
import { fileNameFor } from "../../inspection/fileName.ts";
import { inspectionText, readPartialInspection } from "../../inspection/open.ts";
import { failed, type Outcome, type Problem, succeeded } from "../../inspection/problem.ts";
import type { PartialInspection, Survey } from "../../inspection/schema.ts";
import { PARTLY } from "../../intake/missing.ts";
import type { DecimalMark } from "../../intake/numberText.ts";
import { surveyCsv } from "../../intake/writeCsv.ts";
import { type Command, type CommandLine, type ExitCode, textOf } from "../command.ts";
import { fileReader } from "../fileReader.ts";
import { LOG_OPTIONS } from "../logOptions.ts";
import { printProblem, write, writeOut } from "../output.ts";
import { OVERRIDES } from "../overrides.ts";
import { sourceName } from "../source.ts";

/** Anything that can be read, as an inspection file or as CSV. */
export const convert: Command = {
  name: "convert",
  operands: "FILE…",
  summary: "inspections and CSV logs into one another",
  options: [
    { name: "to", value: "json|csv", help: "an inspection file, or CSV; as --out ends, or json" },
    { name: "out", value: "FILE", help: "where to; each survey has a CSV of its own" },
    { name: "survey", value: "ID", help: "only this survey" },
    { name: "decimal-comma", help: "decimal commas, semicolons between cells" },
    { name: "slide", value: "SLIDE.json", help: "the slide that a CSV's readings were taken on" },
    ...LOG_OPTIONS,
    ...OVERRIDES,
  ],
  run,
};

type Format = "json" | "csv";

async function run(line: CommandLine): Promise<ExitCode> {
  const out = textOf(line, "out");
  const format = formatFor(textOf(line, "to"), out);
  if (!format.ok) return refuse(format.problem);
  const reader = await fileReader(line, PARTLY);
  if (!reader.ok) return refuse(reader.problem);
  if (line.operands.length === 0) {
    return refuse({ where: "convert", what: "no file was named", cure: "Name an inspection or a CSV log." });
  }
  let exitCode: ExitCode = 0;
  const inspections: PartialInspection[] = [];
  for (const file of line.operands) {
    const read = await reader.value(file);
    const chosen = read.ok ? withSurvey(read.value.inspection, textOf(line, "survey")) : read;
    for (const problem of read.ok ? read.value.refused : []) exitCode = refuse(problem, file);
    if (chosen.ok) inspections.push(chosen.value);
    else exitCode = refuse(chosen.problem, file);
  }
  if (inspections.length === 0) return 2;
  const mark = line.options["decimal-comma"] === true ? "," : ".";
  const done = format.value === "json" ? await toJson(inspections, out) : await toCsv(inspections, out, mark);
  return done.ok ? exitCode : refuse(done.problem);
}

function formatFor(asked: string | undefined, out: string | undefined): Outcome<Format> {
  const format = asked ?? (out !== undefined && extname(out).toLowerCase() === ".csv" ? "csv" : "json");
  return format === "json" || format === "csv"
    ? succeeded(format)
    : failed("--to", `"${format}" is not one of its values`, "Write json or csv.");
}

/** The inspection with only the survey asked for, or with all. */
function withSurvey(inspection: PartialInspection, id: string | undefined): Outcome<PartialInspection> {
  if (id === undefined) return succeeded(inspection);
  const surveys = inspection.surveys.filter((survey) => survey.id === id);
  const known = inspection.surveys.map((survey) => survey.id).join(", ");
  return surveys.length === 0
    ? failed("", `there is no survey "${id}"`, `Its surveys: ${known}.`)
    : succeeded({ ...inspection, surveys });
}

async function toJson(
  inspections: readonly PartialInspection[],
  out: string | undefined,
): Promise<Outcome<void>> {
  const whole = joined(inspections);
  if (!whole.ok) return whole;
  const text = inspectionText(whole.value);
  return out === undefined ? succeeded(await write(text)) : writeOut(out, text);
}

/** One inspection of all the surveys, where they are of one slide. */
function joined(inspections: readonly PartialInspection[]): Outcome<PartialInspection> {
  const [first, ...others] = inspections;
  if (first === undefined) throw new Error("No inspection to join.");
  const { surveys: _own, ...about } = first;
  for (const { surveys: _others, ...other } of others) {
    if (!isDeepStrictEqual(other, about)) {
      return failed(
        "",
        "the files are not of one slide, or describe it differently",
        "Convert each by itself, or give them the same slide with --slide SLIDE.json.",
      );
    }
  }
  return readPartialInspection({ ...first, surveys: inspections.flatMap(({ surveys }) => surveys) });
}

async function toCsv(
  inspections: readonly PartialInspection[],
  out: string | undefined,
  mark: DecimalMark,
): Promise<Outcome<void>> {
  const all = inspections.flatMap((inspection) =>
    inspection.surveys.map((survey) => ({ survey, text: surveyCsv(inspection, survey, mark) })),
  );
  const [first, ...others] = all;
  if (first === undefined)
    return failed("surveys", "there is no survey to write as CSV", "Add readings to the file first.");
  if (out === undefined) {
    return others.length === 0
      ? succeeded(await write(first.text))
      : several(all.map(({ survey }) => survey));
  }
  const names =
    others.length === 0
      ? [out]
      : namesFor(
          out,
          all.map(({ survey }) => survey),
        );
  for (const [index, { text }] of all.entries()) {
    const written = await writeOut(names[index] ?? out, text);
    if (!written.ok) return written;
  }
  return succeeded(undefined);
}

function several(surveys: readonly Survey[]): Outcome<never> {
  return failed(
    "",
    `there is more than one survey (${surveys.map(({ id }) => id).join(", ")}), and a CSV holds one`,
    "Name a file with --out, to which each adds its name, or one survey with --survey ID.",
  );
}

/** The name asked for with each survey's own in it: `saddle-before.csv`. */
function namesFor(out: string, surveys: readonly Survey[]): readonly string[] {
  const ending = extname(out);
  const base = out.slice(0, out.length - ending.length);
  const taken = new Set<string>();
  return surveys.map(({ id }, index) => {
    const plain = fileNameFor(id, `survey-${index + 1}`);
    const own = taken.has(plain.toLowerCase()) ? `${plain}-${index + 1}` : plain;
    taken.add(own.toLowerCase());
    return `${base}-${own}${ending}`;
  });
}

function refuse(problem: Problem, file?: string): ExitCode {
  printProblem(problem, file === undefined ? undefined : sourceName(file));
  return 2;
}
