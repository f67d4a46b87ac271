import { execFileSync, spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { parseArgs } from "node:util";
import { PARTS } from "./parts.ts";
import { readProgress, saveProgress, unitsLeft } from "./progress.ts";

/**
 * Checks that take too long for `npm test`. A part takes up no new unit after 50 minutes; called again, it goes on
 * where it was, as long as no source has changed. Fails where a unit fails.
 *
 *   npm run check:long -- [--only fuzz|mutants|repeat] [--minutes 50]
 */
const { values } = parseArgs({
  options: { only: { type: "string" }, minutes: { type: "string", default: "50" } },
});
const names = values.only?.split(",") ?? Object.keys(PARTS);
const git = (...args: readonly string[]): string => execFileSync("git", args, { encoding: "utf8" });
const state = createHash("sha256")
  .update(git("rev-parse", "HEAD") + git("diff", "HEAD"))
  .digest("hex");

for (const name of names) {
  const part = PARTS[name];
  if (part === undefined) throw new Error(`There is no part ${name}: choose of ${Object.keys(PARTS)}.`);
  const file = `.long/${name}.json`;
  const end = Date.now() + Number(values.minutes) * 60_000;
  const units = part();
  let progress = readProgress(file, state);
  for (const unit of unitsLeft(units, progress)) {
    if (Date.now() > end) break;
    console.log(`${name}: ${unit.name}`);
    const [program, ...args] = unit.command;
    const { status } = spawnSync(program, args, { stdio: "inherit", env: { ...process.env, ...unit.env } });
    progress = { state, passed: { ...progress.passed, [unit.name]: status === 0 } };
    saveProgress(file, progress);
  }
  const failed = units.filter((unit) => progress.passed[unit.name] === false);
  const left = units.filter((unit) => progress.passed[unit.name] === undefined);
  console.log(`${name}: ${units.length - failed.length - left.length} passed, ${failed.length} failed`);
  if (left.length > 0) console.log(`${name}: ${left.length} are left; the same command goes on with them`);
  for (const unit of failed) console.log(`${name}: failed: ${unit.name}`);
  if (failed.length > 0) process.exitCode = 1;
}
