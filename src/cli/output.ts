import { writeFile } from "node:fs/promises";
import { failed, type Outcome, type Problem, succeeded } from "../inspection/problem.ts";

/** Ends the program with 0 when whoever reads its output closes the pipe: that is not a fault. */
export function endQuietlyOnClosedPipe(): void {
  process.stdout.on("error", (error: NodeJS.ErrnoException) => {
    if (error.code === "EPIPE") process.exit(0);
    throw error;
  });
}

/** Writes to standard output; resolves when the text has been handed over. */
export function write(text: string): Promise<void> {
  return new Promise((resolve) => {
    process.stdout.write(text, () => resolve());
  });
}

/** Writes a file; a problem with the reason where it cannot be written. */
export async function writeOut(file: string, contents: string): Promise<Outcome<void>> {
  try {
    return succeeded(await writeFile(file, contents));
  } catch (error) {
    const reason = error instanceof Error && "code" in error ? String(error.code) : String(error);
    return failed(
      file,
      `it cannot be written (${reason})`,
      "Name a file in a folder that can be written to.",
    );
  }
}

/**
 * Prints a problem on standard error: where and what on one line, the cure on the next.
 *
 * @param source the file that it is about
 */
export function printProblem({ where, what, cure }: Problem, source?: string): void {
  const places = ["tightspot", source, where].filter((place) => place !== undefined && place !== "");
  process.stderr.write(`${places.join(": ")}: ${what}.\n  ${cure}\n`);
}

/** Prints a fault of the program on standard error, with its stack trace. */
export function printFault(fault: unknown, source?: string): void {
  const trace = fault instanceof Error ? fault.stack : String(fault);
  const places = ["tightspot", ...(source === undefined ? [] : [source])];
  process.stderr.write(`${places.join(": ")}: a fault of the program, not of your files:\n${trace}\n`);
}
