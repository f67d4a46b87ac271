import { execFileSync } from "node:child_process";
import { existsSync, readdirSync, statSync } from "node:fs";
import { join } from "node:path";

const SOURCES = ["src", "sample-data", "package.json", "vite.config.ts"];
const BUILT = "dist/page/index.html";

/** Before the tests: builds the page where anything it is made of is newer than what was built. */
export default function buildPage(): void {
  if (existsSync(BUILT) && Math.max(...SOURCES.map(newest)) < statSync(BUILT).mtimeMs) return;
  execFileSync(process.execPath, ["node_modules/vite/bin/vite.js", "build", "--mode", "page"], {
    // Told that this is a test, the build would take the libraries' development versions.
    env: { ...process.env, NODE_ENV: "production" },
  });
}

function newest(path: string): number {
  const { mtimeMs } = statSync(path);
  if (!statSync(path).isDirectory()) return mtimeMs;
  return Math.max(mtimeMs, ...readdirSync(path).map((name) => newest(join(path, name))));
}
