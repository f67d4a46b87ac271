import { parseArgs } from "node:util";
import { failed, type Outcome, succeeded } from "../inspection/problem.ts";

/** 0: all done; 1: a fault of the program; 2: something the user can cure, reported on standard error. */
export type ExitCode = 0 | 1 | 2;

export interface OptionSpec {
  readonly name: string;
  /** What follows the option, as help shows it; absent where the option stands alone. */
  readonly value?: string;
  readonly help: string;
}

/** The words after the command's name: options by name, `true` where an option stands alone; and the rest. */
export interface CommandLine {
  readonly options: Readonly<Record<string, string | true>>;
  readonly operands: readonly string[];
}

export interface Command {
  readonly name: string;
  /** What it works on, as help shows it: `FILE…`. Empty where it takes nothing. */
  readonly operands: string;
  readonly summary: string;
  readonly options: readonly OptionSpec[];
  readonly run: (line: CommandLine) => Promise<ExitCode>;
}

/** The text given with an option; undefined where it was not given. */
export function textOf({ options }: CommandLine, name: string): string | undefined {
  const value = options[name];
  return typeof value === "string" ? value : undefined;
}

/**
 * Reads the words after a command's name.
 *
 * @param args the words
 * @param command the command that they are for
 * @returns options and operands; a problem where the command has no such option, or its value is missing or given twice
 */
export function readCommandLine(
  args: readonly string[],
  { name: command, options, operands }: Command,
): Outcome<CommandLine> {
  const help = `"tightspot ${command} --help" lists what it takes.`;
  const { tokens } = parseArgs({
    args: [...args],
    strict: false,
    tokens: true,
    options: Object.fromEntries(
      options.map(({ name, value }) => [name, { type: value === undefined ? "boolean" : "string" }]),
    ),
  });
  const given: Record<string, string | true> = {};
  const rest: string[] = [];
  for (const token of tokens) {
    if (token.kind === "positional") {
      if (operands === "") return failed(token.value, "nothing was expected here", help);
      rest.push(token.value);
    } else if (token.kind === "option") {
      const spec = options.find(({ name }) => name === token.name);
      if (spec === undefined) return failed(token.rawName, "there is no such option", help);
      if (spec.value === undefined) {
        if (token.value !== undefined) return failed(token.rawName, "this option takes no value", help);
        given[spec.name] = true;
      } else {
        const value = token.value ?? "";
        const missing = value === "" || (!token.inlineValue && value.startsWith("--"));
        if (missing)
          return failed(token.rawName, "its value is missing", `Give ${token.rawName} ${spec.value}.`);
        if (spec.name in given) {
          return failed(token.rawName, "this option was given twice", "Give it once: it takes one value.");
        }
        given[spec.name] = value;
      }
    }
  }
  return succeeded({ options: given, operands: rest });
}
