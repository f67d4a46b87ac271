import { spawn } from "node:child_process";
import { once } from "node:events";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { text } from "node:stream/consumers";
import { describe, expect, it } from "vitest";
import { COMMAND, tightspot, tightspotProcess, workshop } from "./command.ts";
import { wornScrew } from "./inspections.ts";

const { file } = workshop();
const worn = file("worn.json", JSON.stringify(wornScrew()));

describe("the command line", () => {
  it("tells its version", async () => {
    const { version } = JSON.parse(readFileSync(join(import.meta.dirname, "../../package.json"), "utf8"));
    expect(await tightspotProcess(["--version"])).toEqual({ code: 0, out: `${version}\n`, err: "" });
  });

  it("lists its commands, and every option of a command", async () => {
    const { code, out } = await tightspot(["--help"]);
    expect(code).toBe(0);
    expect(out).toMatch(/assess FILE…[\s\S]*plan[\s\S]*serve/);
    const help = await tightspot(["assess", "--help"]);
    const options =
      "json survey overview report picture profile slide units lead travel working limit running-clearance engaged adjustable take-up " +
      "resolution end-float method holds-load";
    for (const option of options.split(" ")) expect(help.out).toContain(`--${option} `);
    expect(help.code).toBe(0);
    const ofPlan = await tightspot(["plan", "--help"]);
    for (const option of ["stations", "sheet", "json", "units", "lead", "travel", "engaged", "method"])
      expect(ofPlan.out).toContain(`--${option} `);
    for (const line of `${out}${help.out}${ofPlan.out}`.split("\n"))
      expect(line.length).toBeLessThanOrEqual(80);
  });

  it("tells the same by -h and by help", async () => {
    const [all, ofAssess] = await Promise.all([tightspot(["--help"]), tightspot(["assess", "--help"])]);
    for (const args of [["-h"], ["help"]]) expect(await tightspot(args)).toEqual(all);
    for (const args of [
      ["assess", "-h"],
      ["help", "assess"],
    ])
      expect(await tightspot(args)).toEqual(ofAssess);
  });

  it.each([
    [[], /no command was given/, /assess, compare, plan, thread, convert, serve/],
    [["judge", worn], /judge: there is no such command/, /assess, compare, plan, thread, convert, serve/],
    [["assess"], /no file was named/, /Name/],
    [["assess", "--colour", worn], /--colour: there is no such option/, /assess --help/],
    [["assess", worn, "--limit"], /--limit: its value is missing/, /--limit LENGTH/],
    [["assess", worn, "--limit", "--json"], /--limit: its value is missing/, /--limit LENGTH/],
    [["assess", worn, "--limit", "0.2", "--limit", "0.3"], /--limit: this option was given twice/, /once/],
    [["help", "judge"], /judge: there is no such command/, /assess, compare, plan, thread, convert, serve/],
    [["assess", worn, "--limit", "0.15mm"], /--limit: "0.15mm" is not a number/, /without its unit/],
    [["assess", worn, "--travel", "300"], /--travel: "300" is not a range/, /FROM\.\.TO/],
    [["assess", worn, "--adjustable", "maybe"], /--adjustable: "maybe"/, /yes, no/],
    [["assess", worn, "--json=yes"], /--json: this option takes no value/, /assess --help/],
    [["serve", "page"], /page: nothing was expected here/, /serve --help/],
    [["serve", "--port", "many"], /--port: "many" is not a port/, /whole number/],
  ] as const)("%o is refused with its cure", async (args, reason, cure) => {
    // The built command finds the page to serve beside itself.
    const { code, out, err } = await (args[0] === "serve" ? tightspotProcess : tightspot)(args);
    expect([code, out]).toEqual([2, ""]);
    expect(err).toMatch(reason);
    expect(err).toMatch(cure);
  });

  it("ends as a process with the code for what it could not read", async () => {
    const { code, out, err } = await tightspotProcess(["assess", "none.json"]);
    expect([code, out]).toEqual([2, ""]);
    expect(err).toContain("tightspot: none.json: there is no such file");
  });

  it("ends quietly when its reader has seen enough", async () => {
    const many = Array.from({ length: 12 }, () => worn);
    const command = spawn(process.execPath, [COMMAND, "assess", "--json", ...many], { stdio: "pipe" });
    const complaints = text(command.stderr);
    await once(command.stdout, "data");
    command.stdout.destroy();
    const [code] = await once(command, "close");
    expect([code, await complaints]).toEqual([0, ""]);
  });

  it("can be run as a program, which npm links it as", async () => {
    const program = spawn(COMMAND, ["--version"], { stdio: ["ignore", "pipe", "pipe"] });
    expect((await text(program.stdout)).trim()).toMatch(/^\d+\.\d+\.\d+$/);
  });
});
