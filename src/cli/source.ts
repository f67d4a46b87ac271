import { readFile } from "node:fs/promises";
import { buffer } from "node:stream/consumers";
import { failed, type Outcome, succeeded } from "../inspection/problem.ts";

export const STANDARD_INPUT = "-";

/** The bytes of a file; `-` is standard input. */
export async function readSource(file: string): Promise<Outcome<Uint8Array>> {
  if (file === STANDARD_INPUT) return succeeded(await buffer(process.stdin));
  try {
    return succeeded(await readFile(file));
  } catch (error) {
    return unreadable(error);
  }
}

/** The name of a source in messages. */
export function sourceName(file: string): string {
  return file === STANDARD_INPUT ? "standard input" : file;
}

/** The problem of a file or a folder that cannot be read. */
export function unreadable(error: unknown): Outcome<never> {
  const code = error instanceof Error && "code" in error ? error.code : undefined;
  switch (code) {
    case "ENOENT":
      return failed("", "there is no such file", "Check its name and the folder it is in.");
    case "EISDIR":
      return failed("", "this is a folder, not a file", "Name the files in it.");
    case "EACCES":
    case "EPERM":
      return failed(
        "",
        "it may not be read",
        "Change its permissions, or copy it to a folder that you may read.",
      );
    default:
      return failed(
        "",
        `it cannot be read (${String(code ?? error)})`,
        "Copy it to another place and try again.",
      );
  }
}
