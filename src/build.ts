import { execFileSync } from "node:child_process";
import { existsSync, readdirSync, statSync } from "node:fs";
import { join } from "node:path";

const ROOT = join(import.meta.dirname, "..");
const SOURCES = ["src", "sample-data", "package.json", "package-lock.json", "vite.config.ts"];
const PRODUCTS = [
  { mode: "page", built: "dist/page/index.html" },
  { mode: "file", built: "dist/page/tightspot.html" },
  { mode: "command", built: "dist/cli/tightspot.js" },
] as const;

/**
 * Builds the page, the page as one file, and the command, each only where a source is newer than it. npm runs this
 * after every install, and `npx tightspot` in a new checkout counts as one: what is built must stay untouched then.
 */
export default function buildProducts(): void {
  const changed = Math.max(...SOURCES.map((path) => lastChanged(join(ROOT, path))));
  for (const { mode, built } of PRODUCTS) {
    const path = join(ROOT, built);
    if (existsSync(path) && statSync(path).mtimeMs > changed) continue;
    execFileSync(process.execPath, ["node_modules/vite/bin/vite.js", "build", "--mode", mode], {
      cwd: ROOT,
      // With the test runner's NODE_ENV, the build would take the libraries' development versions.
      env: { ...process.env, NODE_ENV: "production" },
      stdio: ["ignore", "ignore", "inherit"],
    });
  }
}

function lastChanged(path: string): number {
  const stats = statSync(path);
  if (!stats.isDirectory()) return stats.mtimeMs;
  return Math.max(stats.mtimeMs, ...readdirSync(path).map((name) => lastChanged(join(path, name))));
}

if (process.argv[1] === import.meta.filename) buildProducts();
