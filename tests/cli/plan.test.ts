import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { measuringPlan } from "../../src/intake/plan/measuringPlan.ts";
import { tightspot, workshop } from "./command.ts";
import { wornScrew } from "./inspections.ts";

const { file, path } = workshop();
const inspection = wornScrew();
const slideFile = file("slide.json", JSON.stringify({ ...inspection, surveys: [] }));
/** A slide that is planned for before its limit is known. */
const { backlashLimit: _, ...withoutLimit } = inspection.slide;
const unlimited = file("unlimited.json", JSON.stringify({ ...inspection, slide: withoutLimit, surveys: [] }));

const planned = async (args: readonly string[]) =>
  JSON.parse((await tightspot(["plan", ...args, "--json"])).out);

describe("the command plan", () => {
  it("tells the stations, and why, and writes the sheet", async () => {
    const sheet = path("sheet.html");
    const { code, out, err } = await tightspot(["plan", slideFile, "--sheet", sheet]);
    expect([code, err]).toEqual([0, ""]);
    expect(out).toMatch(/^Measuring plan, Cross slide: \d+ stations first, \d+ readings \(in all/);
    expect(readFileSync(sheet, "utf8")).toMatch(/^<!doctype html>[\s\S]*lost motion<\/th>/);
  });

  it("gives other programs the same plan, one JSON object", async () => {
    const plan = measuringPlan(inspection.slide);
    if (!plan.ok) throw new Error(plan.problem.what);
    const { assumed, ...rest } = await planned([slideFile]);
    const { assumed: _assumed, ...expected } = plan.value;
    expect(rest).toEqual({ method: "push-pull", ...expected });
    expect(assumed.join(" ")).toContain("push–pull");
  });

  it("needs no limit, no surveys and no file, where options say the rest", async () => {
    const [fromFile, fromOptions] = await Promise.all([
      planned([unlimited, "--engaged", "30"]),
      planned(["--units", "mm", "--travel", "0..300", "--lead", "4", "--engaged", "30"]),
    ]);
    expect(fromFile.stations).toEqual(fromOptions.stations);
  });

  it("reads a slide from standard input", async () => {
    const { code, out } = await tightspot(["plan", "-"], readFileSync(slideFile));
    expect(code).toBe(0);
    expect(out).toContain("Cross slide");
  });

  it("lets an option stand before the file, and lists it", async () => {
    const { stations, assumed, units } = await planned([slideFile, "--units", "in", "--travel", "0..8"]);
    expect([units, stations.at(-1).position]).toEqual(["in", 8]);
    expect(assumed.join(" ")).toContain("The end of the travel is 8 in, as the command says");
  });

  it("plans as many stations as are asked for, with what that costs", async () => {
    const { code, out } = await tightspot(["plan", slideFile, "--stations", "6"]);
    expect(code).toBe(0);
    expect(out).toContain("6 stations, 12 readings");
    expect(out).toContain("What it falls short of");
  });

  it("has the columns of the method on its sheet", async () => {
    const sheet = path("pair.html");
    const { code } = await tightspot(["plan", slideFile, "--method", "dial-pair", "--sheet", sheet]);
    expect(code).toBe(0);
    expect(readFileSync(sheet, "utf8")).toContain("graduated on diameter");
  });

  it.each([
    [
      [],
      /slide\.units: the unit, the start of the travel, .* are missing/,
      /--units mm\|in --lead LENGTH --travel/,
    ],
    [["no.json"], /no\.json: there is no such file/, /name/],
    [[slideFile, unlimited], /second slide/, /one slide/],
    [[slideFile, "--stations", "many"], /--stations: "many" is not a whole number/, /such as 12/],
    [[slideFile, "--stations", "1"], /--stations: 1 is not a number of stations/, /2 to 500/],
    [[slideFile, "--lead", "-4"], /slide\.screw\.lead: must be greater than zero/, /options/],
    [[slideFile, "--method", "positioning"], /--method: positions at targets/, /push-pull/],
    [[slideFile, "--limit", "0.1"], /--limit: there is no such option/, /plan --help/],
    [[slideFile, "--sheet", path("no/such/sheet.html")], /it cannot be written \(ENOENT\)/, /folder/],
  ] as const)("refuses %o with its cure", async (args, reason, cure) => {
    const { code, err } = await tightspot(["plan", ...args]);
    expect(code).toBe(2);
    expect(err).toMatch(reason);
    expect(err).toMatch(cure);
  });
});
