import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname } from "node:path";

/** What is done of a part at one state of the project: whether each unit passed, by its name. */
export interface Progress {
  readonly state: string;
  readonly passed: Readonly<Record<string, boolean>>;
}

/** The progress saved in a file; none where there is no file, or where it is of another state of the project. */
export function readProgress(file: string, state: string): Progress {
  const saved: Progress | null = existsSync(file) ? JSON.parse(readFileSync(file, "utf8")) : null;
  return saved?.state === state ? saved : { state, passed: {} };
}

export function saveProgress(file: string, progress: Progress): void {
  mkdirSync(dirname(file), { recursive: true });
  writeFileSync(file, `${JSON.stringify(progress, null, 2)}\n`);
}

/** The units that have not passed yet: those never run first, then those that failed. */
export function unitsLeft<T extends { readonly name: string }>(
  units: readonly T[],
  { passed }: Progress,
): readonly T[] {
  return [
    ...units.filter(({ name }) => passed[name] === undefined),
    ...units.filter(({ name }) => passed[name] === false),
  ];
}
