import { existsSync } from "node:fs";
import { basename, dirname, join, normalize } from "node:path";

/** What is changed, and the tests that must notice, as patterns of paths from the top of the project. */
export interface Chosen {
  readonly mutate: readonly string[];
  readonly tests: readonly string[];
}

const SOURCES = "src/analysis";

/**
 * Nothing named: all of the analysis, against all of its tests. A file is held by the test of its own name and
 * those whose names go on from it, or, where there is none, by the tests of its folder; a folder by the tests in it.
 *
 * @param paths files and folders below src/analysis
 * @throws for a path that is not there or lies elsewhere
 */
export function chosen(paths: readonly string[]): Chosen {
  const named = (paths.length > 0 ? paths : [SOURCES]).map((path) => normalize(path).replace(/\/$/, ""));
  for (const path of named) {
    if (!`${path}/`.startsWith(`${SOURCES}/`) || !existsSync(path)) {
      throw new Error(`There is no ${path} in ${SOURCES}: name a file or a folder there.`);
    }
  }
  return {
    mutate: named.map((path) => (isSource(path) ? path : `${path}/**/*.ts`)),
    tests: named.map((path) => testsOf(path)),
  };
}

function isSource(path: string): boolean {
  return path.endsWith(".ts");
}

function testsOf(path: string): string {
  const mirrored = path.replace(/^src/, "tests");
  if (!isSource(path)) return `${mirrored}/**/*.test.ts`;
  const own = join(dirname(mirrored), basename(path, ".ts"));
  return existsSync(`${own}.test.ts`) ? `${own}*.test.ts` : `${dirname(mirrored)}/*.test.ts`;
}
