import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { resultSchema } from "../report/resultSchema.ts";
import { tightspot, tightspotProcess, workshop } from "./command.ts";
import { looseNut, twoSurveys, wornScrew } from "./inspections.ts";

const { file, path } = workshop();
const worn = file("worn.json", JSON.stringify(wornScrew()));
const loose = file("loose.json", JSON.stringify(looseNut()));
const both = file("both.json", JSON.stringify(twoSurveys()));

const results = (out: string) =>
  out
    .trimEnd()
    .split("\n")
    .map((line) => resultSchema.parse(JSON.parse(line)));

describe("tightspot assess", () => {
  it("says in words what to do", async () => {
    const { code, out, err } = await tightspot(["assess", worn, loose]);
    expect({ code, err }).toEqual({ code: 0, err: "" });
    expect(out.indexOf("REMAKE THE SCREW")).toBeGreaterThan(0);
    expect(out.indexOf("ADJUST THE NUT")).toBeGreaterThan(out.indexOf("REMAKE THE SCREW"));
    for (const line of out.split("\n")) expect([...line].length).toBeLessThanOrEqual(80 + path("").length);
  });

  it("gives with --json one object a line for each survey, in the order given, with every published key", async () => {
    const { code, out } = await tightspot(["assess", "--json", loose, both]);
    expect(code).toBe(0);
    expect(results(out).map(({ file, survey, verdict }) => [file, survey, verdict])).toEqual([
      [loose, "loose", "adjust-nut"],
      [both, "worn", "remake-screw"],
      [both, "loose", "adjust-nut"],
    ]);
  });

  it("assesses the one survey that is named", async () => {
    const { out } = await tightspot(["assess", "--json", "--survey", "loose", both]);
    expect(results(out).map(({ survey }) => survey)).toEqual(["loose"]);
  });

  it("names the surveys there are where the one asked for is not", async () => {
    const { code, out, err } = await tightspot(["assess", "--survey", "after", both]);
    expect([code, out]).toEqual([2, ""]);
    expect(err).toMatch(/both\.json.*no survey "after"/);
    expect(err).toContain("worn, loose");
  });

  it("gives the same answer twice", async () => {
    const [first, second] = await Promise.all([
      tightspotProcess(["assess", "--json", both]),
      tightspotProcess(["assess", "--json", both]),
    ]);
    expect(second.out).toBe(first.out);
  });

  it("reads standard input", async () => {
    const { code, out } = await tightspotProcess(["assess", "--json", "-"], JSON.stringify(wornScrew()));
    expect(code).toBe(0);
    expect(results(out)[0]).toMatchObject({ file: "-", verdict: "remake-screw" });
  });

  it("knows an inspection by what is in it, not by its name", async () => {
    const odd = file("readings.txt", `\uFEFF  ${JSON.stringify(wornScrew())}`);
    expect((await tightspot(["assess", "--json", odd])).code).toBe(0);
  });

  it("gives no verdict on a screw that holds up a load", async () => {
    const { code, out } = await tightspot(["assess", "--json", "--holds-load", "yes", worn]);
    expect(code).toBe(0);
    expect(results(out)[0]).toMatchObject({ verdict: "no-verdict", chances: null });
  });

  it("writes lengths in inches for a slide kept in inches", async () => {
    const inches = file(
      "inches.json",
      JSON.stringify({
        ...wornScrew({
          units: "in",
          travel: { from: 0, to: 12 },
          screw: { lead: 0.2 },
          nut: { engagedLength: 1.2 },
          backlashLimit: 0.006,
        }),
        surveys: wornScrew().surveys.map((survey) => ({
          ...survey,
          indicator: { resolution: 0.0005 },
          endFloat: [0.0002],
          readings: survey.readings.map((reading) => ({
            position: Number(reading.position) / 25,
            backlash: Number((Number(reading.backlash) / 25).toFixed(4)),
          })),
        })),
      }),
    );
    const [result] = results((await tightspot(["assess", "--json", inches])).out);
    expect(result).toMatchObject({ units: "in", verdict: "remake-screw" });
    expect(result?.loosestSpot.position).toBeGreaterThan(3.5);
    expect(result?.loosestSpot.position).toBeLessThan(5.5);
    expect((await tightspot(["assess", inches])).out).toContain("limit 0.006 in");
  });
});

describe("options of assess", () => {
  it("stand before the file, and each is listed as assumed", async () => {
    const options = ["--limit", "0.5", "--adjustable", "no", "--travel", "-10..310", "--end-float", "0.02"];
    const { code, out } = await tightspot(["assess", "--json", ...options, worn]);
    expect(code).toBe(0);
    const [result] = results(out);
    expect(result?.verdict).toBe("leave-alone");
    expect(result?.endFloat?.value).toBeCloseTo(0.02, 2);
    expect(result?.profile[0]?.position).toBe(-10);
    for (const words of ["limit 0.5", "adjustable no", "travel -10..310", "end-float 0.02"]) {
      expect(result?.assumed.some((line) => line.includes(words))).toBe(true);
    }
  });

  it("stand before the slide of --slide, which stands before the file", async () => {
    const slide = file("slide.json", JSON.stringify({ ...wornScrew({ backlashLimit: 0.5 }), surveys: [] }));
    const bySlide = await tightspot(["assess", "--json", "--slide", slide, worn]);
    expect(results(bySlide.out)[0]?.verdict).toBe("leave-alone");
    const byOption = await tightspot(["assess", "--json", "--slide", slide, "--limit", "0.15", worn]);
    expect(results(byOption.out)[0]?.verdict).toBe("remake-screw");
  });

  it("bring an inspection to the unit asked for, with the same verdict", async () => {
    const [inches] = results((await tightspot(["assess", "--json", "--units", "in", worn])).out);
    const [millimetres] = results((await tightspot(["assess", "--json", worn])).out);
    expect(inches).toMatchObject({ units: "in", verdict: millimetres?.verdict });
    expect((inches?.uniform.value ?? 0) * 25.4).toBeCloseTo(millimetres?.uniform.value ?? 0, 3);
  });

  it("say what the file says otherwise", async () => {
    const [result] = results((await tightspot(["assess", "--json", "--limit", "0.5", worn])).out);
    expect(result?.assumed).toContain("The limit is 0.5 mm, as the command says (the file says 0.15 mm).");
  });

  it("are checked together with the file", async () => {
    const { code, err } = await tightspot(["assess", "--working", "0..500", worn]);
    expect(code).toBe(2);
    expect(err).toMatch(/slide\.workingRange.*must lie within the travel/);
  });

  it("draw the profile with --picture", async () => {
    const { code } = await tightspot(["assess", "--picture", path("profile.svg"), worn]);
    expect(code).toBe(0);
    expect(readFileSync(path("profile.svg"), "utf8")).toMatch(/^<svg [\s\S]*loosest spot[\s\S]*<\/svg>\n$/);
  });

  it("write the report with --report, the same each time, what they override told as assumed", async () => {
    const [once, twice] = [path("once.html"), path("twice.html")];
    const { code, out } = await tightspot(["assess", "--report", once, "--limit", "0.16", worn]);
    expect(code).toBe(0);
    expect(out).toContain("REMAKE THE SCREW");
    await tightspot(["assess", "--report", twice, "--limit", "0.16", worn]);
    const report = readFileSync(once, "utf8");
    expect(report).toMatch(/^<!doctype html>[\s\S]*Remake the screw, with nuts to match[\s\S]*<\/html>\n$/);
    expect(report.replaceAll("\u00a0", " ")).toContain(
      "The limit is 0.16 mm, as the command says (the file says 0.15 mm).",
    );
    expect(readFileSync(twice, "utf8")).toBe(report);
  });

  it("write no report on several surveys, but say how to name one", async () => {
    const { code, out, err } = await tightspot(["assess", "--report", path("none.html"), both]);
    expect([code, out]).toEqual([2, ""]);
    expect(err).toContain("--report");
    expect(err).toContain("--survey ID");
    const named = await tightspot(["assess", "--report", path("one.html"), "--survey", "loose", both]);
    expect(named.code).toBe(0);
    expect(readFileSync(path("one.html"), "utf8")).toContain("this report");
  });

  it("draw no picture of several surveys, but say how to name one", async () => {
    const { code, out, err } = await tightspot(["assess", "--picture", path("none.svg"), both]);
    expect([code, out]).toEqual([2, ""]);
    expect(err).toContain("--survey ID");
  });

  it("say where a picture cannot be written", async () => {
    const { code, err } = await tightspot(["assess", "--picture", path("no/such/folder.svg"), worn]);
    expect(code).toBe(2);
    expect(err).toContain("cannot be written");
  });
});
