import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { Inspection } from "../../src/inspection/schema.ts";
import { comparisonSchema } from "../report/comparison/resultSchema.ts";
import { tightspot, workshop } from "./command.ts";
import { looseNut, twoSurveys, wornScrew } from "./inspections.ts";

const { file, path } = workshop();
const both = file("both.json", JSON.stringify(twoSurveys()));
const worn = file("worn.json", JSON.stringify(wornScrew()));
const loose = file("loose.json", JSON.stringify(looseNut()));

const compared = (out: string) => comparisonSchema.parse(JSON.parse(out));

/** The loose nut's survey read again and again, a little looser each time. */
function history(): Inspection {
  const inspection = looseNut({ backlashLimit: 0.3 });
  const [survey] = inspection.surveys;
  if (survey === undefined) throw new Error("It has one.");
  return {
    ...inspection,
    surveys: [0, 1, 2, 3].map((month) => ({
      ...survey,
      id: `month-${month}`,
      taken: `2026-0${month + 1}-10`,
      stage: "running-in",
      readings: survey.readings.map(({ position, backlash }) => ({
        position: Number(position),
        backlash: Number((Number(backlash) + 0.01 * month).toFixed(3)),
      })),
    })),
  };
}

describe("tightspot compare", () => {
  it("says in words what has changed between two surveys", async () => {
    const { code, out, err } = await tightspot(["compare", both, "--from", "worn", "--to", "loose"]);
    expect({ code, err }).toEqual({ code: 0, err: "" });
    expect(out).toContain("BEFORE AND AFTER");
    expect(out.replaceAll(/\s+/g, " ")).toContain("That is over the limit of 0.15 mm, proven");
  });

  it("gives with --json one object with every published key, the change as the later less the earlier", async () => {
    const { code, out } = await tightspot(["compare", both, "--from", "worn", "--to", "loose", "--json"]);
    expect(code).toBe(0);
    const { file, from, to, change, runningIn } = compared(out);
    expect([file, from.survey, to.survey, runningIn]).toEqual([both, "worn", "loose", null]);
    expect(change.uniform.low).toBeGreaterThan(0.05);
    const turned = await tightspot(["compare", both, "--from", "loose", "--to", "worn", "--json"]);
    expect(compared(turned.out).change.uniform.high).toBeLessThan(-0.05);
  });

  it("compares surveys from two files of one slide", async () => {
    const { code, out } = await tightspot(["compare", worn, loose, "--json"]);
    expect(code).toBe(0);
    expect(compared(out).file).toBe(`${worn}, ${loose}`);
  });

  it("refuses a survey of another slide, with the reason", async () => {
    const other = file("other.json", JSON.stringify(looseNut({ id: "saddle", name: "Saddle" })));
    const { code, out, err } = await tightspot(["compare", worn, other]);
    expect([code, out]).toEqual([2, ""]);
    expect(err).toMatch(/"Cross slide" \(cross-slide\) is another slide than "Saddle" \(saddle\)/);
  });

  it("tells the trend where three surveys or more follow the last repair", async () => {
    const months = file("months.json", JSON.stringify(history()));
    const { code, out } = await tightspot(["compare", months, "--json"]);
    expect(code).toBe(0);
    const { from, to, runningIn } = compared(out);
    expect([from.survey, to.survey]).toEqual(["month-0", "month-3"]);
    expect(runningIn?.by).toBe("date");
    expect(runningIn?.surveys.map(({ at }) => at)).toEqual([
      "2026-01-10",
      "2026-02-10",
      "2026-03-10",
      "2026-04-10",
    ]);
    expect(runningIn?.growth.high).toBeGreaterThan(0.03);
    const { out: words } = await tightspot(["compare", months]);
    expect(words).toContain("Over 4 surveys since the last repair, from 2026-01-10 to 2026-04-10");
  });

  it("draws both profiles and their difference", async () => {
    const picture = path("change.svg");
    const { code } = await tightspot([
      "compare",
      both,
      "--from",
      "worn",
      "--to",
      "loose",
      "--picture",
      picture,
    ]);
    expect(code).toBe(0);
    expect(readFileSync(picture, "utf8")).toMatch(/^<svg .*<title>Lost motion, worn and loose/);
  });

  it("writes the report on both surveys, the same each time", async () => {
    const [first, second] = [path("first.html"), path("second.html")];
    for (const report of [first, second]) {
      const { code } = await tightspot([
        "compare",
        both,
        "--from",
        "worn",
        "--to",
        "loose",
        "--report",
        report,
      ]);
      expect(code).toBe(0);
    }
    const report = readFileSync(first, "utf8");
    expect(report).toMatch(/^<!doctype html>[\s\S]*<title>Before and after, Cross slide, 2026-03-14/);
    expect(readFileSync(second, "utf8")).toBe(report);
  });

  it("lists in the report what the command line said of the slide", async () => {
    const report = path("limited.html");
    await tightspot(["compare", both, "--limit", "0.5", "--report", report, "--json"]);
    expect(readFileSync(report, "utf8")).toContain("--limit 0.5");
  });

  it("takes what the command line says of the slide, and lists it", async () => {
    const { out } = await tightspot(["compare", both, "--limit", "0.5", "--json"]);
    const { acceptance, assumed } = compared(out);
    expect(acceptance).toMatchObject({ conformance: "proven", limit: 0.5 });
    expect(assumed.join()).toContain("--limit 0.5");
  });

  it.each([
    ["only one survey", [worn], /only one survey/],
    ["a survey that is not there", [both, "--to", "other"], /no survey "other".*\n.*worn, loose/],
    ["no file", [], /no file was named/],
    ["a file that is not there", [path("missing.json")], /missing\.json: there is no such file/],
    [
      "a report that cannot be written",
      [both, "--report", path("none/x.html")],
      /none\/x\.html: it cannot be written/,
    ],
    [
      "a picture that cannot be written",
      [both, "--picture", path("none/x.svg")],
      /none\/x\.svg: it cannot be written/,
    ],
  ])("fails with the reason: %s", async (_, args, reason) => {
    const { code, err } = await tightspot(["compare", ...args]);
    expect(code).toBe(2);
    expect(err).toMatch(reason);
  });
});
