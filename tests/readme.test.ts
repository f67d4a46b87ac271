import { spawn, spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { readCsv } from "../src/intake/readCsv.ts";

const ROOT = join(import.meta.dirname, "..");
const readme = readFileSync(join(ROOT, "README.md"), "utf8");

/** Every command of the README, line by line. */
const commands = [...readme.matchAll(/```sh\n([\s\S]*?)```/g)].flatMap(([, block]) =>
  block.trim().split("\n"),
);
const [install, test, ...others] = commands;
const scratch = mkdtempSync(join(tmpdir(), "tightspot-readme-"));

afterAll(() => rmSync(scratch, { recursive: true, force: true }));

function run(command: string) {
  const elsewhere = command.replace(
    /profile\.(?:svg|csv)|(?:change|thread)\.svg|(?:log-sheet|overview|slip)\.html|(?<=--report )report\.html/,
    (name) => join(scratch, name),
  );
  return spawnSync("bash", ["-c", elsewhere], { cwd: ROOT, encoding: "utf8" });
}

describe("the README", () => {
  it("installs and starts the page with one line, which answers", async () => {
    expect(install).toBe("npm ci && npm start");
    const child = spawn("bash", ["-c", "exec npm start -- --port 0"], { cwd: ROOT, detached: true });
    try {
      const address = await new Promise<string>((resolve, reject) => {
        let said = "";
        child.stdout.on("data", (data) => {
          said += data;
          const found = /http:\/\/127\.0\.0\.1:\d+\/?/.exec(said);
          if (found !== null) resolve(found[0]);
        });
        child.on("exit", () => reject(new Error(`It ended, saying: ${said}`)));
      });
      const page = await (await fetch(address)).text();
      expect(page).toContain("<title>Tightspot");
    } finally {
      if (child.pid !== undefined) process.kill(-child.pid);
    }
  });

  it("tests with the line that the continuous check runs", () => {
    expect(test).toBe("npm ci && npm test");
    const lines = readFileSync(join(ROOT, ".ci/run"), "utf8").trim().split("\n");
    const steps = lines.flatMap(
      (line) => /^(?:npm_config_cache="\$npx_cache" )?(npm (?:ci|test))$/.exec(line)?.[1] ?? [],
    );
    expect(steps.join(" && ")).toBe(test);
  });

  it.each(others)("%s", (command) => {
    const { status, stdout, stderr } = run(command);
    expect(stderr).toBe("");
    expect(status).toBe(0);
    expect(stdout).not.toBe("");
  });

  it("shows the log sheet that the command writes", () => {
    const written = join(scratch, "written.html");
    run(`npx tightspot plan --sheet ${written} sample-data/adjust-nut-lathe-2-cross-slide.json`);
    const shown = "sample-data/log-sheet-lathe-2-cross-slide.html";
    expect(readme).toContain(shown);
    expect(readFileSync(written, "utf8")).toBe(readFileSync(join(ROOT, shown), "utf8"));
  });

  it("shows a log that is read whole, with what it says of the slide", () => {
    const [, log] = /```csv\n([\s\S]*?)```/.exec(readme) ?? [];
    const read = readCsv(log ?? "");
    if (!read.ok) throw new Error(read.problem.what);
    expect(read.value.refused).toEqual([]);
    expect(read.value.readings).toHaveLength(4);
    expect(read.value.slideData.slide).toMatchObject({ travel: { from: 0, to: 160 }, backlashLimit: 0.15 });
  });

  it("shows the report that the command writes", () => {
    const written = join(scratch, "written-report.html");
    run(
      `npx tightspot assess --report ${written} sample-data/remake-screw-worn-middle-boring-mill-table.json`,
    );
    const shown = "sample-data/report-boring-mill-table.html";
    expect(readme).toContain(shown);
    expect(readFileSync(written, "utf8")).toBe(readFileSync(join(ROOT, shown), "utf8"));
  });

  it("shows the picture that the command draws", () => {
    const name = "sample-data/remake-screw-worn-middle-boring-mill-table";
    const drawn = join(scratch, "drawn.svg");
    run(`npx tightspot assess --picture ${drawn} ${name}.json`);
    expect(readme).toContain(`${name}.svg`);
    expect(readFileSync(drawn, "utf8")).toBe(readFileSync(join(ROOT, `${name}.svg`), "utf8"));
  });
});
