import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

/** One run of a part: what it is called where it is told of, and the command. */
export interface Unit {
  readonly name: string;
  readonly command: readonly [program: string, ...args: string[]];
  readonly env?: Readonly<Record<string, string>>;
}

const VITEST = ["node_modules/vitest/vitest.mjs", "run", "--testTimeout=3600000"] as const;

/** How many times the whole suite is repeated, to find tests that fail now and then. */
const REPEATS = 5;

function filesBelow(folder: string, ending: string): readonly string[] {
  return readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(ending))
    .map((name) => join(folder, name))
    .sort();
}

/** The parts of the long check, by name. */
export const PARTS: Readonly<Record<string, () => readonly Unit[]>> = {
  /** Property tests, with 50 times as many cases. */
  fuzz: () =>
    filesBelow("tests", ".test.ts")
      .filter((file) => readFileSync(file, "utf8").includes("fc.assert"))
      .map((file) => ({
        name: file,
        command: [process.execPath, ...VITEST, file],
        env: { PROPERTY_RUNS_TIMES: "50" },
      })),
  /** Small changes of the analysis, each of which a test must notice. */
  mutants: () =>
    filesBelow("src/analysis", ".ts").map((file) => ({
      name: file,
      command: [process.execPath, "node_modules/tsx/dist/cli.mjs", "tests/mutants/index.ts", file],
    })),
  /** All tests, over and over, their files in another order each time. */
  repeat: () =>
    Array.from({ length: REPEATS }, (_, index) => ({
      name: `run ${index + 1}`,
      command: [process.execPath, ...VITEST, "--sequence.shuffle.files", `--sequence.seed=${index + 1}`],
    })),
};
