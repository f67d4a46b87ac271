import { execFileSync } from "node:child_process";
import { existsSync, readdirSync, statSync } from "node:fs";
import { join } from "node:path";

const ROOT = join(import.meta.dirname, "..");
const SOURCES = ["src", "sample-data", "package.json", "vite.config.ts"];
const PRODUCTS = [
  { mode: "page", built: "dist/page/index.html" },
  { mode: "file", built: "dist/page/tightspot.html" },
  { mode: "command", built: "dist/cli/tightspot.js" },
] as const;

/** Before the tests: builds the page and the command where anything they are made of is newer than what was built. */
export default function buildProducts(): void {
  const changed = Math.max(...SOURCES.map((path) => lastChanged(join(ROOT, path))));
  for (const { mode, built } of PRODUCTS) {
    const path = join(ROOT, built);
    if (existsSync(path) && statSync(path).mtimeMs > changed) continue;
    execFileSync(process.execPath, ["node_modules/vite/bin/vite.js", "build", "--mode", mode], {
      cwd: ROOT,
      // Told that this is a test, the build would take the libraries' development versions.
      env: { ...process.env, NODE_ENV: "production" },
    });
  }
}

function lastChanged(path: string): number {
  const stats = statSync(path);
  if (!stats.isDirectory()) return stats.mtimeMs;
  return Math.max(stats.mtimeMs, ...readdirSync(path).map((name) => lastChanged(join(path, name))));
}
