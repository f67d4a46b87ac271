import type { Command, OptionSpec } from "./command.ts";

const HELP: OptionSpec = { name: "help", help: "this help; also -h" };
const VERSION: OptionSpec = { name: "version", help: "the version of the program" };

/** The help of the program: every command in a line. */
export function programHelp(commands: readonly Command[]): string {
  return [
    "Tightspot: from backlash readings along a machine slide to what should be done.",
    "",
    "  tightspot COMMAND …",
    "",
    ...table(commands.map(({ name, operands, summary }) => [`${name} ${operands}`.trim(), summary])),
    "",
    ...table([HELP, VERSION].map(optionRow)),
    "",
    '"tightspot help COMMAND" lists the options of a command.',
    "",
  ].join("\n");
}

/** The help of a command: what it does and its options. */
export function commandHelp({ name, operands, summary, options }: Command): string {
  return [
    `tightspot ${`${name} ${operands}`.trim()} [options]`,
    "",
    `  ${summary}`,
    "",
    ...table([...options, HELP].map(optionRow)),
    "",
  ].join("\n");
}

function optionRow({ name, value, help }: OptionSpec): readonly [string, string] {
  return [`--${name}${value === undefined ? "" : ` ${value}`}`, help];
}

function table(rows: readonly (readonly [string, string])[]): readonly string[] {
  const widest = Math.max(...rows.map(([left]) => left.length));
  return rows.map(([left, right]) => `  ${left.padEnd(widest)}  ${right}`);
}
