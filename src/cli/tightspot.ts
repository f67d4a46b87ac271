#!/usr/bin/env node
import { PROGRAM_VERSION } from "../inspection/programVersion.ts";
import { type ExitCode, readCommandLine } from "./command.ts";
import { COMMANDS } from "./commands/index.ts";
import { commandHelp, programHelp } from "./help.ts";
import { endQuietlyOnClosedPipe, printFault, printProblem, write } from "./output.ts";

const HELP = ["--help", "-h"];

async function main([name, ...args]: readonly string[]): Promise<ExitCode> {
  if (name === "help" && args[0] !== undefined) return main([...args, "--help"]);
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

endQuietlyOnClosedPipe();
try {
  process.exitCode = await main(process.argv.slice(2));
} catch (fault) {
  printFault(fault);
  process.exitCode = 1;
}
