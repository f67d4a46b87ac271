import { spawn } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { text } from "node:stream/consumers";
import { afterAll } from "vitest";

export const COMMAND = join(import.meta.dirname, "../../dist/cli/tightspot.js");

export interface Ended {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/** Runs the built command as a process of its own, with the given text on its standard input. */
export async function tightspot(args: readonly string[], input: string | Uint8Array = ""): Promise<Ended> {
  const child = spawn(process.execPath, [COMMAND, ...args], { stdio: "pipe" });
  // A command that has seen enough may end before it has read its input.
  child.stdin.on("error", () => undefined);
  child.stdin.end(input);
  const [out, err, code] = await Promise.all([
    text(child.stdout),
    text(child.stderr),
    new Promise<number | null>((resolve) => child.on("close", resolve)),
  ]);
  return { code, out, err };
}

export interface Workshop {
  /** The path of a file of that name in the folder, there or not. */
  readonly path: (name: string) => string;
  /** Writes a file and gives its path. */
  readonly file: (name: string, contents: string | Uint8Array) => string;
}

/** A folder that lasts as long as the tests of the file that asks for it. */
export function workshop(): Workshop {
  const folder = mkdtempSync(join(tmpdir(), "tightspot-"));
  afterAll(() => rmSync(folder, { recursive: true }));
  const path = (name: string): string => join(folder, name);
  return {
    path,
    file: (name, contents) => {
      writeFileSync(path(name), contents);
      return path(name);
    },
  };
}
