import { availableParallelism } from "node:os";
import { parseArgs } from "node:util";
import { Stryker } from "@stryker-mutator/core";
import { chosen } from "./chosen.ts";

/**
 * Changes the analysis in one small way at a time and looks whether a test notices. Fails where fewer than 80 in a
 * hundred changes are noticed. What was found is kept, and only what has changed since is tried again.
 *
 *   npm run mutants -- [file or folder below src/analysis …] [--concurrency 2]
 */
const { values, positionals } = parseArgs({
  options: { concurrency: { type: "string", default: `${availableParallelism()}` } },
  allowPositionals: true,
});
const { mutate, tests } = chosen(positionals);
// The only way to tell vitest.config.ts, which another process reads.
process.env.TESTS_FOR_MUTANTS = tests.join(",");

await new Stryker({
  mutate: [...mutate],
  concurrency: Number(values.concurrency),
  testRunner: "vitest",
  vitest: { configFile: "tests/mutants/vitest.config.ts" },
  coverageAnalysis: "perTest",
  // Constants and tables are made once, when their file is read: a change of one would take every test, not its own.
  ignoreStatic: true,
  ignorePatterns: ["dist", ".mutants"],
  // Nothing in tsconfig.json needs rewriting for the copy, and TypeScript 7 has no interface to rewrite it with.
  tsconfigFile: "none",
  // All tests once, on a machine that has other work too.
  dryRunTimeoutMinutes: 60,
  // On top of half as long again as the change's tests take unchanged: most that comes to no end does so in `temper.ts`.
  timeoutMS: 10_000,
  incremental: true,
  incrementalFile: ".mutants/found.json",
  tempDirName: ".mutants/copies",
  reporters: ["progress-append-only", "clear-text", "html", "json"],
  clearTextReporter: { allowColor: false, allowEmojis: false, logTests: false, reportTests: false },
  htmlReporter: { fileName: ".mutants/report.html" },
  jsonReporter: { fileName: ".mutants/report.json" },
  thresholds: { high: 90, low: 80, break: 80 },
}).runMutationTest();
