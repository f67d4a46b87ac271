import { writeFile } from "node:fs/promises";
import { failed, type Outcome, type Problem, succeeded } from "../inspection/problem.ts";

/** A reader that has seen enough closes the pipe; that is no fault, and the rest need not be written. */
export function endQuietlyOnClosedPipe(): void {
  process.stdout.on("error", (error: NodeJS.ErrnoException) => {
    if (error.code === "EPIPE") process.exit(0);
    throw error;
  });
}

/** Writes to standard output, waiting until it has been taken. */
export function write(text: string): Promise<void> {
  return new Promise((resolve) => {
    process.stdout.write(text, () => resolve());
  });
}

/** Writes a file whole. */
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

/** Tells a problem on standard error: what is wrong and where, and on a second line how to cure it. */
export function complain({ where, what, cure }: Problem, source?: string): void {
  const places = ["tightspot", source, where].filter((place) => place !== undefined && place !== "");
  process.stderr.write(`${places.join(": ")}: ${what}.\n  ${cure}\n`);
}

/** Tells a fault of the program on standard error, with the trace that finding it takes. */
export function tellFault(fault: unknown, source?: string): void {
  const trace = fault instanceof Error ? fault.stack : String(fault);
  const places = ["tightspot", ...(source === undefined ? [] : [source])];
  process.stderr.write(`${places.join(": ")}: a fault of the program, not of your files:\n${trace}\n`);
}
