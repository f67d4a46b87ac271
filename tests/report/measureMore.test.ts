import { describe, expect, it } from "vitest";
import { lengthsIn } from "../../src/inspection/lengths.ts";
import { summaryOf } from "../../src/report/summary.ts";
import { exampleAssessment } from "./exampleAssessment.ts";

const { settings } = exampleAssessment();
const LOOSE = { value: 0.04, low: 0.03, high: 0.05 };
const open = {
  verdict: "measure-more",
  chances: {
    "leave-alone": 0,
    "correct-end-float": 0,
    "adjust-nut": 0.72,
    "replace-nuts": 0.01,
    "remake-screw": 0.27,
  },
  likeliest: "adjust-nut",
} as const;

const summary = (changes: Parameters<typeof exampleAssessment>[0]): string =>
  summaryOf(exampleAssessment(changes), lengthsIn("mm", 0.01));

describe("the summary of a measure-more", () => {
  it("tells what is likeliest, what else it may be, and what to read", () => {
    const text = summary({
      ...open,
      reasons: ["chances"],
      nextReadings: [
        { position: 137.2, why: "The tight spot may be here." },
        { endFloat: true, why: "It decides." },
      ],
    });
    expect(text).toContain("Likeliest so far: adjust the nut (chance 72 in 100)");
    expect(text).toContain("it could also be remake the screw, with nuts to match (27 in 100).");
    expect(text).not.toContain("fit new nuts");
    expect(text).toContain("Read next at about 137 mm and the end float.");
  });

  it("says which stations are wanting", () => {
    const few = exampleAssessment().stations.slice(0, 4);
    expect(summary({ ...open, reasons: ["coverage"], stations: few })).toContain(
      "There are 4 stations, and a verdict needs at least 5.",
    );
    expect(summary({ ...open, reasons: ["coverage"] })).toContain("farther than the nut's length, 30 mm");
    expect(summary({ ...open, reasons: ["unread-end"] })).toContain("within half the nut's length, 15 mm");
  });

  it("repeats the check that stops it", () => {
    const checks = [
      { check: "drift", severity: "note", message: "It drifts.", readings: [] },
      { check: "slip", severity: "stop", message: "Reading 4 is ten times the others.", readings: [3] },
    ] as const;
    expect(summary({ ...open, reasons: ["checks", "chances"], checks })).toMatch(/^Reading 4 is ten times/);
  });

  it("does not say that there are 1 stations", () => {
    const stations = exampleAssessment().stations.slice(0, 1);
    expect(summary({ ...open, reasons: ["coverage"], stations })).toContain(
      "There is 1 station, and a verdict needs at least 5.",
    );
  });

  it("says that the end float was not measured where that alone decides", () => {
    const text = summary({
      ...open,
      likeliest: "correct-end-float",
      endFloat: null,
      reasons: ["end-float-unmeasured"],
      nextReadings: [{ endFloat: true, why: "It decides." }],
    });
    expect(text).toMatch(/^Lost motion exceeds the limit by no more than the end float may come to/);
    expect(text).toContain("Read next the end float.");
  });

  it.each([
    ["checks", /^End float of 0.40 mm is more than lost motion. Measure it again.$/],
    [
      "coverage",
      /^Some of the working range .* End float of 0.40 mm is more than lost motion. Measure it again.$/,
    ],
  ] as const)("says nothing more where %s stop it and the end float is impossible", (reason, words) => {
    const checks = [
      {
        check: "end float larger than lost motion",
        severity: "stop",
        message: "End float of 0.40 mm is more than lost motion. Measure it again.",
        readings: [],
      },
    ] as const;
    const nextReadings = [{ position: 137.2, why: "The tight spot may be here." }];
    expect(summary({ ...open, reasons: [reason], checks, nextReadings, endFloat: LOOSE })).toMatch(words);
  });
});

describe("the summary of what sits at the limit", () => {
  const atLimit = { ...open, reasons: ["at-the-limit"], canBeSettled: false } as const;

  it("does not ask for further readings", () => {
    expect(summary(atLimit)).toContain("further readings cannot be expected to settle it.");
    expect(summary(atLimit)).not.toContain("Read next");
  });

  it("says that finer graduations may settle it where rounding outweighs scatter", () => {
    // A graduation of 0.05 mm rounds with a standard deviation of 0.05 / √12 = 0.0144 mm.
    const finer = "readings with an indicator of finer graduations may";
    expect(summary({ ...atLimit, resolution: 0.05, repeatability: 0.014 })).toContain(finer);
    expect(summary({ ...atLimit, resolution: 0.05, repeatability: 0.015 })).not.toContain(finer);
  });

  it.each([
    ["the end float where it is surely too much", { endFloat: LOOSE }, "First correct the end float"],
    [
      "the nut where the end float may be in order",
      { endFloat: { value: 0.011, low: 0.001, high: 0.021 } },
      "First adjust the nut",
    ],
    ["the nut where the end float is not known", { endFloat: null }, "First adjust the nut"],
    ["the drive where it has play", { drivePlay: 0.1 }, "First correct the drive play"],
    ["nothing where it is likeliest in order", { likeliest: "leave-alone" }, "Leave it as it is for now"],
    [
      "nothing where the nut cannot be adjusted",
      { settings: { ...settings, adjustable: false } },
      "Read again after some hours of use, before parts are made",
    ],
  ] as const)("has touched first %s", (_, changes, words) => {
    expect(summary({ ...atLimit, ...changes })).toContain(words);
  });
});
