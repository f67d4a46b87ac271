import { describe, expect, it } from "vitest";
import { lengthsIn } from "../../src/inspection/lengths.ts";
import { summaryOf, verdictTitle } from "../../src/report/summary.ts";
import { terminalText } from "../../src/report/terminal.ts";
import { exampleAssessment } from "./exampleAssessment.ts";
import { exampleInspection } from "./exampleInspection.ts";

type Changes = Parameters<typeof exampleAssessment>[0];

const LOOSE = { value: 0.04, low: 0.03, high: 0.05 };
const IN_ORDER = { value: 0.01, low: 0.008, high: 0.012 };
const CHANGES_PARTS = ["adjust-nut", "replace-nuts", "remake-screw"] as const;

const summary = (changes: Changes): string => summaryOf(exampleAssessment(changes), lengthsIn("mm", 0.01));
const title = (changes: Changes): string => verdictTitle(exampleAssessment(changes));

describe("end float and drive play before nut or screw are touched", () => {
  it.each(CHANGES_PARTS)("come first of all for %s", (verdict) => {
    const endFloat =
      "bring the end float of 0.04 mm, give or take 0.01, down to 0.01 mm at the thrust bearing";
    const drivePlay = "take out the drive play of 0.10 mm (key, pin or gears between wheel and screw)";
    const starts = (changes: Changes, words: string): void =>
      expect(summary({ verdict, ...changes }).slice(0, words.length)).toBe(words);
    starts({ endFloat: LOOSE }, `First ${endFloat}; no nut removes it.`);
    starts({ drivePlay: 0.1 }, `First ${drivePlay}; no nut removes it.`);
    starts({ endFloat: LOOSE, drivePlay: 0.1 }, `First ${endFloat}, and ${drivePlay}; no nut removes them.`);
    expect(summary({ verdict })).not.toContain("First");
    expect(title({ verdict, drivePlay: 0.1 })).toMatch(/^Correct the drive play, then [a-z]/);
    expect(title({ verdict, drivePlay: 0.1, endFloat: LOOSE })).toMatch(
      /^Correct the end float and the drive play, then /,
    );
  });

  it("do not where more is to be measured, or where no verdict is given", () => {
    for (const changes of [
      { verdict: "measure-more", reasons: ["coverage"] },
      { verdict: "no-verdict", reasons: ["holds-load"] },
    ] as const) {
      expect(summary({ ...changes, endFloat: LOOSE, drivePlay: 0.1 })).not.toMatch(
        /First|bring the end float/,
      );
      expect(title({ ...changes, endFloat: LOOSE })).not.toContain("end float");
    }
  });

  it("do not where the slide is left alone: the end float is told last, for when it is convenient", () => {
    const text = summary({ verdict: "leave-alone", endFloat: LOOSE });
    expect(text).not.toContain("First");
    expect(text.slice(text.indexOf("Nut and screw"))).toBe(
      "Nut and screw need nothing done. The end float is 0.04 mm, give or take 0.01; a bearing in order has 0.01 mm: " +
        "correct it when convenient.",
    );
    expect(title({ verdict: "leave-alone", endFloat: LOOSE })).toBe("Leave it alone");
    expect(summary({ verdict: "leave-alone" })).not.toContain("convenient");
  });
});

describe("a slide that end float and drive play put over its limit", () => {
  const verdict = "correct-end-float";

  it.each([
    [
      "end float",
      { endFloat: LOOSE },
      "Of that, 0.04 mm, give or take 0.01, is end float of the screw in its thrust bearing. Bring the end float " +
        "down to 0.01 mm at the thrust bearing, and the slide comes within the limit; leave the nut as it is.",
      "Correct the end float",
    ],
    [
      "drive play",
      { endFloat: IN_ORDER, drivePlay: 0.1 },
      "Of that, 0.10 mm is drive play (key, pin or gears between wheel and screw) and 0.01 mm, give or take less " +
        "than 0.01, is end float of the screw in its thrust bearing. Take the play out of the drive, and the slide " +
        "comes within the limit; leave the nut as it is.",
      "Correct the drive play",
    ],
    [
      "both",
      { endFloat: LOOSE, drivePlay: 0.1 },
      "Of that, 0.10 mm is drive play (key, pin or gears between wheel and screw) and 0.04 mm, give or take 0.01, is " +
        "end float of the screw in its thrust bearing. Bring the end float down to 0.01 mm at the thrust bearing and " +
        "take the play out of the drive, and the slide comes within the limit; leave the nut as it is.",
      "Correct the end float and the drive play",
    ],
    [
      "an end float that was not measured",
      { endFloat: null },
      "over the limit of 0.15 mm. Bring the end float down to 0.01 mm at the thrust bearing, and the slide comes " +
        "within the limit; leave the nut as it is.",
      "Correct the end float",
    ],
  ] as const)("is told to correct %s", (_, changes, words, heading) => {
    const text = summary({ verdict, ...changes });
    expect(text.slice(-words.length)).toBe(words);
    expect(title({ verdict, ...changes })).toBe(heading);
  });

  it("has drive play among the numbers and the chances, where there is any", () => {
    const text = (drivePlay: number): string =>
      terminalText("x.json", exampleAssessment({ verdict, drivePlay }), exampleInspection());
    expect(text(0.1)).toMatch(/\n {2}Drive play +0\.10 mm\n/);
    expect(text(0.1)).toMatch(/\n {2}Correct the drive play +/);
    expect(text(0)).not.toMatch(/drive play/i);
  });
});
