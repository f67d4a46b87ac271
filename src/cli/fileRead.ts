import type { Problem } from "../inspection/problem.ts";
import type { Inspection } from "../inspection/schema.ts";
import type { Statement } from "../intake/statements.ts";
import type { CsvOptions } from "../intake/understanding.ts";
import type { CommandSays } from "./overrides.ts";

/** A survey, in an inspection where everything that was said elsewhere is in its place. */
export interface SurveyRead<Made = Inspection> {
  readonly inspection: Made;
  readonly survey: string;
  /** What was taken from elsewhere than the file, or had to be found, in sentences. */
  readonly assumed: readonly string[];
}

export interface FileRead<Made = Inspection> {
  readonly inspection: Made;
  readonly surveys: readonly SurveyRead<Made>[];
  /** Rows that could not be read; the rest was. */
  readonly refused: readonly Problem[];
}

/** What is said beside the file: by the slide named with --slide, and before it by the command line. */
export interface SaidElsewhere {
  readonly slide: Statement | undefined;
  readonly command: CommandSays;
  /** Of how a log is to be read. */
  readonly log: CsvOptions;
}

/** The sources in the order that the later stands before the earlier. */
export function statementsOf({ slide, command }: SaidElsewhere): readonly Statement[] {
  return slide === undefined ? [command] : [slide, command];
}

/** A line that lists the options given, whether or not they contradict anything. */
export function optionsLine({ command }: SaidElsewhere): readonly string[] {
  return command.words === "" ? [] : [`The command line says ${command.words}.`];
}
