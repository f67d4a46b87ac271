import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { resultSchema } from "../report/resultSchema.ts";
import { tightspot, workshop } from "./command.ts";
import { wornScrew } from "./inspections.ts";

const { file, path } = workshop();

/** The readings of the worn screw as a spreadsheet with decimal commas writes them. */
const rows = wornScrew()
  .surveys.flatMap(({ readings }) => readings)
  .map((reading) => `${reading.position};${String(reading.backlash).replace(".", ",")}`);
const log = ["Position (mm);Backlash (mm)", ...rows, ""].join("\r\n");
const inMicrometres = log.replace(/;0,(\d+)/g, (_, decimals) => `;${decimals.padEnd(3, "0")}`);
const worn = file("worn.csv", log);
const SLIDE = ["--lead", "4", "--travel", "0..300", "--limit", "0.15"];

const resultIn = (out: string) => resultSchema.parse(JSON.parse(out));

describe("tightspot assess of a log", () => {
  it("comes to the same verdict as of the inspection with the same readings", async () => {
    const { code, out, err } = await tightspot(["assess", "--json", ...SLIDE, worn]);
    expect({ code, err }).toEqual({ code: 0, err: "" });
    expect(resultIn(out)).toMatchObject({ survey: "worn", units: "mm", verdict: "remake-screw" });
  });

  it("takes the slide from an inspection file, and options before it", async () => {
    const slide = file("slide.json", JSON.stringify({ ...wornScrew(), surveys: [] }));
    const bySlide = await tightspot(["assess", "--json", "--slide", slide, worn]);
    expect(resultIn(bySlide.out).verdict).toBe("remake-screw");
    const byOption = await tightspot(["assess", "--json", "--slide", slide, "--limit", "0.5", worn]);
    expect(resultIn(byOption.out)).toMatchObject({
      verdict: "leave-alone",
      assumed: expect.arrayContaining([
        expect.stringMatching(/limit is 0\.5 mm, as the command says.*0\.15 mm/),
      ]),
    });
  });

  it("answers in the unit asked for, whatever the unit of the slide and of the log", async () => {
    const slide = file("metric.json", JSON.stringify({ ...wornScrew(), surveys: [] }));
    const { out } = await tightspot(["assess", "--json", "--slide", slide, "--units", "in", worn]);
    const result = resultIn(out);
    expect(result).toMatchObject({ units: "in", verdict: "remake-screw" });
    expect(result.profile.at(-1)?.position).toBeCloseTo(300 / 25.4, 5);
  });

  it("takes the slide from lines of the log itself", async () => {
    const lines = [
      "slide.screw.lead: 4",
      "slide.travel.from: 0",
      "slide.travel.to: 300",
      "slide.backlashLimit: 0.15",
    ];
    const { code, out } = await tightspot(["assess", "--json", "-"], [...lines, log].join("\n"));
    expect(code).toBe(0);
    expect(resultIn(out)).toMatchObject({ file: "-", verdict: "remake-screw" });
  });

  it("reads UTF-16, as Windows programs write it", async () => {
    const { code, out } = await tightspot(
      ["assess", "--json", ...SLIDE, "-"],
      Buffer.from(`\uFEFF${log}`, "utf16le"),
    );
    expect(code).toBe(0);
    expect(resultIn(out).verdict).toBe("remake-screw");
  });

  it("says all that is missing at once, and the options that give it", async () => {
    const { code, out, err } = await tightspot(["assess", worn]);
    expect([code, out]).toEqual([2, ""]);
    expect(err).toMatch(/worn\.csv: .*travel.*lead.*limit/);
    expect(err).toContain("--lead LENGTH --travel FROM..TO --limit LENGTH");
    expect(err.trimEnd().split("\n")).toHaveLength(2);
  });

  it("assesses the rest where a row cannot be read, and loses none silently", async () => {
    const marred = file("marred.csv", log.replace("\r\n25;0,11\r\n", "\r\n25;O,11\r\n"));
    const { code, out, err } = await tightspot(["assess", "--json", ...SLIDE, marred]);
    expect(code).toBe(2);
    expect(err).toMatch(/marred\.csv: line 3: .*O,11/);
    const result = resultIn(out);
    expect(result.verdict).toBe("remake-screw");
    expect(result.assumed.some((line) => line.startsWith("Line 3 of the log is left out"))).toBe(true);
  });

  it("reads lengths without a unit in the unit asked for", async () => {
    const bare = file("bare.csv", log.replaceAll(" (mm)", ""));
    const unasked = await tightspot(["assess", ...SLIDE, bare]);
    expect(unasked.code).toBe(2);
    expect(unasked.err).toContain("--units mm|in");
    const asked = await tightspot(["assess", "--json", ...SLIDE, "--units", "mm", bare]);
    expect(resultIn(asked.out).verdict).toBe("remake-screw");
  });

  it.each([
    ["which columns they are", log.replace(/^.*\r\n/, ""), ["--columns", "position=1 (mm),backlash=2 (mm)"]],
    ["what a heading means", log.replace("Position (mm)", "Where"), ["--columns", "position=Where (mm)"]],
    [
      "which of two columns to read",
      log.replace("Backlash (mm)", "Backlash (mm);Lash (mm)").replace(/,(\d+)\r/g, ",$1;9\r"),
      ["--columns", "backlash=Backlash (mm)"],
    ],
    [
      "whether a mark sets off thousands",
      inMicrometres.replace("(mm)\r", "(µm)\r").replace("\r\n300;", "\r\n300,000;"),
      ["--decimal-mark", "comma"],
    ],
    ["a lost motion that is none in its unit", inMicrometres, ["--columns", "backlash=2 (µm)"]],
    [
      "positions that are none in their unit",
      log.replace(/\n(\d+);/g, (_, position) => `\n${String(Number(position) / 25.4).replace(".", ",")};`),
      ["--columns", "position=1 (in)", "--units", "mm"],
    ],
  ])("names the option that settles %s, and takes it", async (_, doubtful, option) => {
    const unsaid = await tightspot(["assess", "--json", ...SLIDE, "-"], doubtful);
    expect(unsaid.code).toBe(2);
    expect(unsaid.err).toContain(option[0]);
    expect(unsaid.err.trimEnd().split("\n")).toHaveLength(2);
    const said = await tightspot(["assess", "--json", ...SLIDE, ...option, "-"], doubtful);
    expect(said.err).toBe("");
    expect(resultIn(said.out).verdict).toBe("remake-screw");
  });

  it("refuses what --columns cannot mean", async () => {
    const refused = async (columns: string): Promise<string> =>
      (await tightspot(["assess", ...SLIDE, "--columns", columns, worn])).err;
    expect(await refused("backlash")).toMatch(/"backlash" does not name a column\.\n.*ROLE=COLUMN/);
    expect(await refused("backlash=Depth")).toMatch(
      /there is no column Depth\.\n.*"Position \(mm\)", "Backlash \(mm\)"/,
    );
    expect(await refused("backlash=2 (furlong)")).toMatch(/"furlong" is no unit/);
  });

  it("says of a log that is given as the slide that it is none", async () => {
    const { code, err } = await tightspot(["assess", "--slide", worn, worn]);
    expect(code).toBe(2);
    expect(err).toMatch(
      /^tightspot: --slide .*worn\.csv: this is a log or other text, not an inspection\.\n {2}Name an/,
    );
  });

  it("writes the profile as CSV, with headings that are not those of readings", async () => {
    const profile = path("profile.csv");
    const { out } = await tightspot(["assess", "--json", ...SLIDE, "--profile", profile, worn]);
    const [headings, ...rows] = readFileSync(profile, "utf8").trimEnd().split("\r\n");
    expect(headings).toBe('position (mm),profile (mm),"from, 95 % (mm)","to, 95 % (mm)"');
    const rounded = resultIn(out).profile.map(({ position, backlash, low, high }) =>
      [position, backlash, low, high].map((value) => Number(value.toFixed(3))),
    );
    expect(rows.map((row) => row.split(",").map(Number))).toEqual(rounded);
    expect((await tightspot(["assess", ...SLIDE, profile])).err).toContain("no row of headings");
  });
});
