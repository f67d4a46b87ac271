import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { assessSurvey } from "../src/analysis/assess.ts";
import type { Verdict } from "../src/analysis/assessment.ts";
import { openInspection } from "../src/inspection/open.ts";
import { inOneLine, type Outcome } from "../src/inspection/problem.ts";
import type { Inspection } from "../src/inspection/schema.ts";
import { inspectionFromCsv } from "../src/intake/inspectionFromCsv.ts";
import { WHOLE } from "../src/intake/missing.ts";
import { readCsv } from "../src/intake/readCsv.ts";

const FOLDER = new URL("../sample-data/", import.meta.url);

/** What each sample is meant to show: the verdict on each of its surveys. */
const MEANT: readonly (readonly [string, readonly Verdict[]])[] = [
  ["adjust-nut-lathe-2-cross-slide.csv", ["adjust-nut"]],
  ["adjust-nut-lathe-2-cross-slide.json", ["adjust-nut"]],
  ["before-and-after-lathe-1-cross-slide.json", ["adjust-nut", "leave-alone"]],
  ["before-and-after-mill-saddle.json", ["replace-nuts", "leave-alone"]],
  ["correct-end-float-surface-grinder-cross-feed.json", ["correct-end-float"]],
  ["leave-alone-drilling-table.json", ["leave-alone"]],
  ["measure-more-lathe-4-cross-slide.json", ["measure-more"]],
  ["no-verdict-mill-knee.json", ["no-verdict"]],
  ["positioning-pattern-mill-table.json", ["adjust-nut"]],
  ["remake-screw-worn-at-one-end-planer-head.csv", ["remake-screw"]],
  ["remake-screw-worn-at-one-end-planer-head.json", ["remake-screw"]],
  ["remake-screw-worn-middle-boring-mill-table.json", ["remake-screw"]],
  ["replace-nuts-mill-table.json", ["replace-nuts"]],
  ["running-in-boring-mill-saddle.json", Array(6).fill("leave-alone")],
];

/** What speaks of each sample of a check, besides the check that it is named after. */
const BESIDES: Readonly<Record<string, readonly string[]>> = {
  "no repeats": ["first station not read again"],
  "reading without its partner": ["fewer runs than the standard asks for"],
  "run given twice": ["reading without its partner"],
};

/** The names of all checks, as the analysis gives them to its findings. */
function namesOfChecks(): readonly string[] {
  const analysis = new URL("../src/analysis/", import.meta.url);
  const sources = readdirSync(analysis, { recursive: true, encoding: "utf8" }).filter((file) =>
    file.endsWith(".ts"),
  );
  return sources.flatMap((file) =>
    [...readFileSync(new URL(file, analysis), "utf8").matchAll(/check: "([^"]+)"/g)].map(([, name]) => name),
  );
}

function opened(file: string): Inspection {
  const text = readFileSync(new URL(file, FOLDER), "utf8");
  return file.endsWith(".json") ? valueIn(openInspection(text)) : fromLog(text);
}

function fromLog(text: string): Inspection {
  const csv = valueIn(readCsv(text));
  expect(csv.refused).toEqual([]);
  return valueIn(inspectionFromCsv(csv, { id: "log", name: "Slide", taken: "2026-03-01" }, WHOLE)).inspection;
}

function valueIn<T>(outcome: Outcome<T>): T {
  if (!outcome.ok) throw new Error(inOneLine(outcome.problem));
  return outcome.value;
}

describe("the samples", () => {
  test("are all told of, here and in their README", () => {
    const files = readdirSync(FOLDER).filter((file) => file !== "README.md" && file !== "checks");
    const readme = readFileSync(new URL("README.md", FOLDER), "utf8");
    expect(files.filter((file) => !/\.(svg|html)$/.test(file))).toEqual(MEANT.map(([file]) => file));
    for (const file of files) expect(readme).toContain(`\`${file}\``);
  });

  test.each(MEANT)("%s leads to %j", (file, verdicts) => {
    const inspection = opened(file);
    const assessments = inspection.surveys.map(({ id }) => valueIn(assessSurvey(inspection, id)));
    expect(assessments.map(({ verdict }) => verdict)).toEqual(verdicts);
    for (const { verdict, chances } of assessments) {
      if (verdict === "measure-more" || verdict === "no-verdict") continue;
      // A case is clear-cut where its verdict stands well clear of the 0.95 that it needs.
      expect(chances?.[verdict]).toBeGreaterThan(0.98);
    }
  });

  test.each(["adjust-nut-lathe-2-cross-slide", "remake-screw-worn-at-one-end-planer-head"])(
    "%s holds the same readings as a file and as a log",
    (name) => {
      const readings = (file: string): readonly string[] =>
        (opened(file).surveys[0]?.readings ?? [])
          .map((item) => JSON.stringify({ ...item, note: undefined }))
          .sort();
      expect(readings(`${name}.csv`)).toEqual(readings(`${name}.json`));
    },
  );
});

describe("the samples of checks", () => {
  const folder = readdirSync(new URL("checks/", FOLDER));

  test("are one of each check, and are told of in the README", () => {
    const files = namesOfChecks().map((name) => `${name.replaceAll(" ", "-")}.csv`);
    expect(folder.toSorted()).toEqual([...new Set(files)].sort());
    const readme = readFileSync(new URL("README.md", FOLDER), "utf8");
    for (const file of folder) expect(readme).toContain(`\`${file}\``);
  });

  test.each(folder)("checks/%s shows it", (file) => {
    const name = file.replace(/\.csv$/, "").replaceAll("-", " ");
    const { checks, verdict } = valueIn(assessSurvey(opened(`checks/${file}`), "log"));
    expect(checks.map(({ check }) => check).sort()).toEqual([name, ...(BESIDES[name] ?? [])].sort());
    const stops = checks.some(({ severity }) => severity === "stop");
    if (stops) expect(["measure-more", "no-verdict"]).toContain(verdict);
  });
});
