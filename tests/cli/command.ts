import { spawn } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Readable } from "node:stream";
import { text } from "node:stream/consumers";
import { afterAll, vi } from "vitest";
import { main } from "../../src/cli/main.ts";

export const COMMAND = join(import.meta.dirname, "../../dist/cli/tightspot.js");

export interface Ended {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

let lastRun: Promise<unknown> = Promise.resolve();

/**
 * Runs the command in this process, with the given text on its standard input; calls at the same time run one after
 * the other, as they share the process's streams.
 */
export function tightspot(args: readonly string[], input: string | Uint8Array = ""): Promise<Ended> {
  const run = lastRun.then(() => runHere(args, input));
  lastRun = run.catch(() => undefined);
  return run;
}

async function runHere(args: readonly string[], input: string | Uint8Array): Promise<Ended> {
  const written = { out: "", err: "" };
  const writeTo =
    (stream: keyof typeof written) =>
    (chunk: string | Uint8Array, ...rest: unknown[]): boolean => {
      written[stream] += typeof chunk === "string" ? chunk : Buffer.from(chunk).toString();
      const done = rest.at(-1);
      if (typeof done === "function") done();
      return true;
    };
  const outputs = [
    vi.spyOn(process.stdout, "write").mockImplementation(writeTo("out")),
    vi.spyOn(process.stderr, "write").mockImplementation(writeTo("err")),
  ];
  const standardInput = vi
    .spyOn(process, "stdin", "get")
    .mockReturnValue(Readable.from([Buffer.from(input)]) as typeof process.stdin);
  try {
    const code = await main(args);
    return { code, ...written };
  } finally {
    for (const mock of [...outputs, standardInput]) mock.mockRestore();
  }
}

/** Runs the built command as a process of its own, with the given text on its standard input. */
export async function tightspotProcess(
  args: readonly string[],
  input: string | Uint8Array = "",
): Promise<Ended> {
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
