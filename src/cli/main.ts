import { PROGRAM_VERSION } from "../inspection/programVersion.ts";
import { type ExitCode, readCommandLine } from "./command.ts";
import { COMMANDS } from "./commands/index.ts";
import { commandHelp, programHelp } from "./help.ts";
import { printFault, printProblem, write } from "./output.ts";

const HELP = ["--help", "-h"];

/**
 * Runs the command line.
 *
 * @param args the words after the program's name
 * @returns the exit code; a fault of the program is written to standard error
 */
export async function main(args: readonly string[]): Promise<ExitCode> {
  try {
    return await runCommand(args);
  } catch (fault) {
    printFault(fault);
    return 1;
  }
}

async function runCommand([name, ...args]: readonly string[]): Promise<ExitCode> {
  if (name === "help" && args[0] !== undefined) return runCommand([...args, "--help"]);
  if (name === "help" || HELP.includes(name ?? "")) return print(programHelp(COMMANDS));
  if (name === "--version") return print(`${PROGRAM_VERSION}\n`);
  const command = COMMANDS.find((each) => each.name === name);
  if (command === undefined) {
    const what = name === undefined ? "no command was given" : "there is no such command";
    const known = COMMANDS.map((each) => each.name).join(", ");
    printProblem({ where: name ?? "", what, cure: `Commands: ${known}; "tightspot --help" describes them.` });
    return 2;
  }
  if (args.some((arg) => HELP.includes(arg))) return print(commandHelp(command));
  const line = readCommandLine(args, command);
  if (!line.ok) {
    printProblem(line.problem);
    return 2;
  }
  return command.run(line.value);
}

async function print(text: string): Promise<ExitCode> {
  await write(text);
  return 0;
}
