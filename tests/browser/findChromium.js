import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import { delimiter, join, resolve } from "node:path";
import { fileURLToPath } from "node:url";

const PLACES = ["/usr/bin/chromium", "/usr/bin/chromium-browser"];
const NAMES = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable"];

/** The path of a Chromium that runs; null where there is none. */
export function findChromium() {
  const stated = process.env.CHROMIUM;
  const onPath = (process.env.PATH ?? "")
    .split(delimiter)
    .flatMap((folder) => NAMES.map((name) => join(folder, name)));
  const candidates = stated ? [stated] : [...PLACES, ...onPath];
  return candidates.find((path) => existsSync(path) && runs(path)) ?? null;
}

/** Some systems put a script in the browser's place that only says how to install it. */
function runs(path) {
  return spawnSync(path, ["--version"], { timeout: 30_000 }).status === 0;
}

function installFromDebian() {
  if (process.getuid?.() !== 0 || spawnSync("apt-get", ["--version"]).status !== 0) return;
  const options = { stdio: "inherit", env: { ...process.env, DEBIAN_FRONTEND: "noninteractive" } };
  spawnSync("apt-get", ["update"], options);
  spawnSync("apt-get", ["install", "--yes", "--no-install-recommends", "chromium"], options);
}

const isRunByItself =
  process.argv[1] !== undefined && resolve(process.argv[1]) === fileURLToPath(import.meta.url);
if (isRunByItself) {
  if (findChromium() === null) installFromDebian();
  if (findChromium() === null) {
    console.error("The tests need a browser: install Chromium, or set CHROMIUM to the path of one.");
    process.exit(1);
  }
}
