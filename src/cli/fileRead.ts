import type { Problem } from "../inspection/problem.ts";
import type { Inspection } from "../inspection/schema.ts";
import type { Statement } from "../intake/statements.ts";
import type { CsvOptions } from "../intake/understanding.ts";
import type { CommandStatement } from "./overrides.ts";

/** A survey, in an inspection that already holds what options and slide file state. */
export interface SurveyRead<Made = Inspection> {
  readonly inspection: Made;
  readonly survey: string;
  /** What options and slide file override, and how a log was understood, in sentences. */
  readonly assumed: readonly string[];
}

export interface FileRead<Made = Inspection> {
  readonly inspection: Made;
  readonly surveys: readonly SurveyRead<Made>[];
  /** Rows that could not be read. */
  readonly refused: readonly Problem[];
}

/** What is stated outside the file: by the slide named with --slide, and by the command line, which overrides it. */
export interface StatedOutside {
  readonly slide: Statement | undefined;
  readonly command: CommandStatement;
  /** How to read a log. */
  readonly log: CsvOptions;
}

/** The statements, each of which overrides the one before it. */
export function statementsOf({ slide, command }: StatedOutside): readonly Statement[] {
  return slide === undefined ? [command] : [slide, command];
}

/** A sentence that lists the options given; none without options. */
export function optionsLine({ command }: StatedOutside): readonly string[] {
  return command.words === "" ? [] : [`The command line says ${command.words}.`];
}
