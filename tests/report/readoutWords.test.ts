import { expect, it } from "vitest";
import { lengthsIn } from "../../src/inspection/lengths.ts";
import { readoutWords } from "../../src/report/readoutWords.ts";
import { exampleAssessment } from "./exampleAssessment.ts";

const MM = lengthsIn("mm", 0.01);

it("a station is read off with its readings, struck ones and the wear of the screw there", () => {
  const struck = [{ position: 100, value: 0.42, from: [26] }];
  // 0.11 + 0.2 exp(−(10/35)²) = 0.294 mm; read 0.006 mm to either side of that.
  expect(readoutWords(exampleAssessment({ struck }), 100, MM)).toEqual([
    "Lost motion 0.29 mm, give or take 0.01.",
    "About 0.22 mm left after adjusting.",
    "Read here: 0.29 and 0.30 mm.",
    "Struck: 0.42 mm.",
    "Screw worn by at least 0.15 mm here.",
  ]);
});

it("between stations nothing is said to be read", () => {
  expect(readoutWords(exampleAssessment(), 260, MM)).toEqual([
    "Lost motion 0.11 mm, give or take 0.01.",
    "About 0.04 mm left after adjusting.",
  ]);
});

it("what new nuts would leave is named so, and nothing where nothing changes", () => {
  const assessment = exampleAssessment();
  const fixed = { ...assessment, settings: { ...assessment.settings, adjustable: false } };
  expect(readoutWords(fixed, 260, MM)).toContain("About 0.04 mm left after new nuts.");
  const same = { ...assessment, profileAfterAdjusting: assessment.profile };
  expect(readoutWords(same, 260, MM)).toHaveLength(1);
});
