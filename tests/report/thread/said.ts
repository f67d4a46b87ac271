import { readCommandLine } from "../../../src/cli/command.ts";
import { thread } from "../../../src/cli/commands/thread.ts";
import { threadSaid } from "../../../src/cli/threadRequest.ts";
import type { ThreadSaid } from "../../../src/report/thread/threadSaid.ts";

/** What a command line makes of a thread, without a process of its own; throws where it is refused. */
export function saidBy(words: string): ThreadSaid {
  const line = readCommandLine(words.split(" "), thread);
  const said = line.ok ? threadSaid(line.value, null) : line;
  if (!said.ok) throw new Error(`${said.problem.where}: ${said.problem.what}`);
  return said.value;
}

/** A thread of each form, and the longest slip that there is. */
export const EVERY_FORM = [
  "--form trapezoidal-30 --diameter 24 --pitch 5 --starts 2 --hand left",
  "--form acme-29 --diameter 1 --per-inch 5 --class 2G",
  "--form stub-acme-29 --diameter 2 --per-inch 2 --class 2G",
  "--form square --diameter 24 --pitch 5",
  "--form metric-60 --diameter 20 --pitch 2.5",
  "--form unified-60 --diameter 0.5 --per-inch 13",
  "--form whitworth-55 --diameter 1 --per-inch 8",
  "--form trapezoidal-30 --diameter 300 --pitch 44",
] as const;
