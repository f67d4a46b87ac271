import { writeFile } from "node:fs/promises";
import { failed, type Outcome, succeeded } from "../inspection/problem.ts";

/** Writes a file that was asked for by an option. @param what what it holds, as a complaint names it: `the picture` */
export async function writeOut(file: string, text: string, what: string): Promise<Outcome<void>> {
  try {
    return succeeded(await writeFile(file, text));
  } catch (error) {
    const reason = error instanceof Error && "code" in error ? String(error.code) : String(error);
    return failed(
      file,
      `${what} cannot be written (${reason})`,
      "Name a file in a folder that can be written to.",
    );
  }
}
