import { existsSync, readdirSync, statSync } from "node:fs";
import { join } from "node:path";
import { build } from "vite";

const ROOT = join(import.meta.dirname, "..");

/** Builds the command before the tests run, where it is missing or older than what it is built from. */
export default async function buildCommand(): Promise<void> {
  const built = join(ROOT, "dist/cli/tightspot.js");
  const sources = ["src", "package.json", "vite.config.ts"].map((path) => join(ROOT, path));
  const isFresh = existsSync(built) && statSync(built).mtimeMs > Math.max(...sources.map(lastChanged));
  if (!isFresh) await build({ root: ROOT, mode: "command", logLevel: "error" });
}

function lastChanged(path: string): number {
  const stats = statSync(path);
  if (!stats.isDirectory()) return stats.mtimeMs;
  return Math.max(stats.mtimeMs, ...readdirSync(path).map((name) => lastChanged(join(path, name))));
}
