import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { z } from "zod";
import { openInspection } from "../../src/inspection/open.ts";
import { tightspot, workshop } from "./command.ts";

const { file, path } = workshop();

const SAMPLES = join(import.meta.dirname, "../../sample-data");
const sample = (name: string): string => join(SAMPLES, name);
const samples = readdirSync(SAMPLES).filter((name) => name.endsWith(".json"));
const jsonIn = (text: string): unknown => JSON.parse(text);
const surveysIn = (name: string) =>
  z.object({ surveys: z.array(z.unknown()) }).parse(jsonIn(readFileSync(sample(name), "utf8"))).surveys;

const LOG = "Position (mm);Backlash (mm)\r\n0;0,21\r\n60;0,20\r\n";

describe("tightspot convert", () => {
  it("makes an inspection of a log, without a limit, a lead or a travel", async () => {
    const { code, out, err } = await tightspot(["convert", "-"], LOG);
    expect({ code, err }).toEqual({ code: 0, err: "" });
    expect(jsonIn(out)).toEqual({
      format: "tightspot-inspection",
      version: 1,
      slide: { id: "standard input-slide", name: "standard input", units: "mm" },
      surveys: [
        {
          id: "standard input",
          taken: "1970-01-01",
          stage: "routine",
          method: "push-pull",
          readings: [
            { position: 0, backlash: 0.21 },
            { position: 60, backlash: 0.2 },
          ],
        },
      ],
    });
  });

  it("makes a file that assess takes, once it is told what is missing", async () => {
    const log = file("log.csv", `${LOG}90;0,21\r\n120;0,20\r\n30;0,20\r\n`);
    const made = path("log.json");
    expect((await tightspot(["convert", log, "--out", made])).code).toBe(0);
    const alone = await tightspot(["assess", made]);
    expect(alone.code).toBe(2);
    expect(alone.err).toMatch(/travel.*lead.*limit.* missing/);
    expect(alone.err).toContain("--lead LENGTH --travel FROM..TO --limit LENGTH");
    const told = await tightspot([
      "assess",
      "--json",
      made,
      "--lead",
      "4",
      "--travel",
      "0..120",
      "--limit",
      "0.5",
    ]);
    expect(told.err).toBe("");
    expect(jsonIn(told.out)).toMatchObject({ verdict: "leave-alone" });
  });

  it("takes what the command line says of the slide into the file", async () => {
    const slide = ["--lead", "4", "--travel", "0..120", "--limit", "0.15"];
    const { out } = await tightspot(["convert", "-", ...slide], LOG);
    const opened = openInspection(out);
    expect(opened.ok && opened.value.slide).toMatchObject({
      travel: { from: 0, to: 120 },
      backlashLimit: 0.15,
    });
  });

  it.each(samples.filter((name) => surveysIn(name).length === 1))(
    "writes %s as CSV, with decimal points or commas, and reads the same back",
    async (name) => {
      for (const style of [[], ["--decimal-comma"]]) {
        const csv = await tightspot(["convert", sample(name), "--to", "csv", ...style]);
        expect({ code: csv.code, err: csv.err }).toEqual({ code: 0, err: "" });
        const back = await tightspot(["convert", "-"], csv.out);
        expect({ code: back.code, err: back.err }).toEqual({ code: 0, err: "" });
        expect(jsonIn(back.out)).toEqual(jsonIn(readFileSync(sample(name), "utf8")));
      }
    },
  );

  it("writes a CSV for each of several surveys, named after it, and joins them again", async () => {
    const both = sample("before-and-after-mill-saddle.json");
    const alone = await tightspot(["convert", both, "--to", "csv"]);
    expect(alone).toMatchObject({ code: 2, out: "" });
    expect(alone.err).toMatch(/more than one survey.*\n.*--out.*--survey ID/);
    expect((await tightspot(["convert", both, "--out", path("saddle.csv")])).code).toBe(0);
    const written = ["before", "after"].map((id) => path(`saddle-${id}.csv`));
    expect(written.filter(existsSync)).toEqual(written);
    expect(existsSync(path("saddle.csv"))).toBe(false);
    const back = await tightspot(["convert", ...written]);
    expect(jsonIn(back.out)).toEqual(jsonIn(readFileSync(both, "utf8")));
    const one = await tightspot(["convert", both, "--survey", "after", "--to", "csv"]);
    expect(one.out).toBe(readFileSync(path("saddle-after.csv"), "utf8"));
  });

  it("does not join logs of different slides", async () => {
    const { code, err } = await tightspot(["convert", file("a.csv", LOG), file("b.csv", LOG)]);
    expect(code).toBe(2);
    expect(err).toContain("not of one slide");
  });

  it("brings all to another unit where asked", async () => {
    const { out } = await tightspot(
      ["convert", "-", "--units", "in"],
      "position (mm),backlash (mm)\n25.4,0.254\n",
    );
    expect(jsonIn(out)).toMatchObject({
      slide: { units: "in" },
      surveys: [{ readings: [{ position: 1, backlash: 0.01 }] }],
    });
    const back = await tightspot(["convert", "-", "--units", "mm"], out);
    expect(jsonIn(back.out)).toMatchObject({
      surveys: [{ readings: [{ position: 25.4, backlash: 0.254 }] }],
    });
  });

  it("converts the rest where a row cannot be read, and names the row", async () => {
    const { code, out, err } = await tightspot(["convert", "-"], LOG.replace("0,20", "O,20"));
    expect(code).toBe(2);
    expect(err).toMatch(/standard input: line 3: .*O,20/);
    expect(jsonIn(out)).toMatchObject({ surveys: [{ readings: [{ position: 0, backlash: 0.21 }] }] });
  });

  it.each([
    [["convert"], /no file was named/],
    [["convert", "-", "--to", "pdf"], /--to: "pdf" is not one of its values/],
    [["convert", "-", "--survey", "x"], /there is no survey "x"/],
    [["convert", "-", "--out", "/there/is/no/such/folder.json"], /cannot be written/],
  ])("refuses %j in a line and its cure", async (args, reason) => {
    const { code, err } = await tightspot(args, LOG);
    expect(code).toBe(2);
    expect(err).toMatch(reason);
    expect(err.trimEnd().split("\n")).toHaveLength(2);
  });
});
