import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { availableParallelism, tmpdir } from "node:os";
import { join } from "node:path";
import { assessSurvey } from "../../src/analysis/assess.ts";
import buildProducts from "../../src/build.ts";
import { openInspection } from "../../src/inspection/open.ts";
import { resultOf } from "../../src/report/result.ts";
import { simulateSlide } from "../simulator/simulatedSlide.ts";

const COMMAND = join(import.meta.dirname, "../../dist/cli/tightspot.js");
/** Until the engine has compiled what it runs often. */
const WARM_UP = 40;

/**
 * How fast the command assesses a folder of simulated inspections, against assessing the same files one after the
 * other in this process once it is warm, reading and writing included. Where nothing but the processor limits it, the
 * ratio nears the number of cores that are free; what each thread takes to start and to warm up, which the processor
 * time shows, keeps it below.
 */
export function fleet(files: number, base: number): void {
  buildProducts();
  const folder = mkdtempSync(join(tmpdir(), "tightspot-fleet-"));
  try {
    const paths = Array.from({ length: files }, (_, index) => {
      const path = join(folder, `${String(index).padStart(5, "0")}.json`);
      writeFileSync(path, JSON.stringify(simulateSlide(base + index * 7919).inspection));
      return path;
    });
    for (const path of paths.slice(0, WARM_UP)) assessFile(path);
    const one = inThisProcess(paths);
    const all = byTheCommand(folder, files);
    console.log(
      `${files} files: ${(one.seconds / all.seconds).toFixed(2)} times the rate of one thread that is warm, on ` +
        `${availableParallelism()} cores; ${(all.processor / one.processor).toFixed(2)} times its processor time ` +
        `(here ${(files / all.seconds).toFixed(1)} files a second, ${((1000 * one.processor) / files).toFixed(0)} ms of processor an assessment)`,
    );
  } finally {
    rmSync(folder, { recursive: true });
  }
}

function assessFile(path: string): string {
  const opened = openInspection(readFileSync(path, "utf8"));
  if (!opened.ok) throw new Error(opened.problem.what);
  const inspection = opened.value;
  return inspection.surveys
    .map(({ id }) => {
      const assessed = assessSurvey(inspection, id);
      if (!assessed.ok) throw new Error(assessed.problem.what);
      return JSON.stringify(resultOf(path, assessed.value, inspection));
    })
    .join("\n");
}

interface Taken {
  readonly seconds: number;
  /** Seconds of all cores together. */
  readonly processor: number;
}

function inThisProcess(paths: readonly string[]): Taken {
  const begun = performance.now();
  const before = process.cpuUsage();
  for (const path of paths) assessFile(path);
  const { user, system } = process.cpuUsage(before);
  return { seconds: (performance.now() - begun) / 1000, processor: (user + system) / 1e6 };
}

/** The shell's own clock tells what a process and its threads have used. */
function byTheCommand(folder: string, files: number): Taken {
  const timed = 'TIMEFORMAT="%R %U %S"; time "$@"';
  const { status, stdout, stderr } = spawnSync(
    "bash",
    ["-c", timed, "bash", process.execPath, COMMAND, "assess", "--json", folder],
    { encoding: "utf8", maxBuffer: Number.POSITIVE_INFINITY, env: { ...process.env, LC_ALL: "C" } },
  );
  const lines = stdout.trimEnd().split("\n").length;
  if (status !== 0 || lines !== files) throw new Error(`${lines} of ${files} files were assessed: ${stderr}`);
  const [seconds = 0, user = 0, system = 0] = stderr.trim().split(" ").map(Number);
  return { seconds, processor: user + system };
}
