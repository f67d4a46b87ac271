#!/usr/bin/env node
import { PROGRAM_VERSION } from "../inspection/programVersion.ts";
import type { ExitCode } from "./command.ts";
import { readCommandLine } from "./commandLine.ts";
import { COMMANDS } from "./commands/index.ts";
import { commandHelp, programHelp } from "./help.ts";
import { complain, endQuietlyOnClosedPipe, tellFault, write } from "./output.ts";

const HELP = ["--help", "-h"];

async function main([name, ...args]: readonly string[]): Promise<ExitCode> {
  if (name === "help" && args[0] !== undefined) return main([...args, "--help"]);
  if (name === "help" || HELP.includes(name ?? "")) return say(programHelp(COMMANDS));
  if (name === "--version") return say(`${PROGRAM_VERSION}\n`);
  const command = COMMANDS.find((each) => each.name === name);
  if (command === undefined) {
    const what = name === undefined ? "no command was given" : "there is no such command";
    const known = COMMANDS.map((each) => each.name).join(", ");
    complain({ where: name ?? "", what, cure: `Commands: ${known}; "tightspot --help" tells more.` });
    return 2;
  }
  if (args.some((arg) => HELP.includes(arg))) return say(commandHelp(command));
  const line = readCommandLine(args, command);
  if (!line.ok) {
    complain(line.problem);
    return 2;
  }
  return command.run(line.value);
}

async function say(text: string): Promise<ExitCode> {
  await write(text);
  return 0;
}

endQuietlyOnClosedPipe();
try {
  process.exitCode = await main(process.argv.slice(2));
} catch (fault) {
  tellFault(fault);
  process.exitCode = 1;
}
