/** 0: all done; 1: a fault of the program; 2: something the user can cure, told on standard error. */
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

/** The text given with an option, or nothing. */
export function textOf({ options }: CommandLine, name: string): string | undefined {
  const value = options[name];
  return typeof value === "string" ? value : undefined;
}
