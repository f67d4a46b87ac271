#!/usr/bin/env node
import type { ExitCode } from "./command.ts";
import { readCommandLine } from "./commandLine.ts";
import { COMMANDS } from "./commands/index.ts";
import { commandHelp, programHelp } from "./help.ts";
import { complain, endQuietlyOnClosedPipe, write } from "./output.ts";

declare const __TIGHTSPOT_VERSION__: string;

async function main([name, ...args]: readonly string[]): Promise<ExitCode> {
  if (name === "--help") return say(programHelp(COMMANDS));
  if (name === "--version") return say(`${__TIGHTSPOT_VERSION__}\n`);
  const command = COMMANDS.find((each) => each.name === name);
  if (command === undefined) {
    const what = name === undefined ? "no command was given" : "there is no such command";
    const known = COMMANDS.map((each) => each.name).join(", ");
    complain({ where: name ?? "", what, cure: `Commands: ${known}; "tightspot --help" tells more.` });
    return 2;
  }
  if (args.includes("--help")) return say(commandHelp(command));
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
  const trace = fault instanceof Error ? fault.stack : String(fault);
  process.stderr.write(`tightspot: a fault of the program, not of your files:\n${trace}\n`);
  process.exitCode = 1;
}
