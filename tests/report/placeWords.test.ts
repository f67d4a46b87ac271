import { describe, expect, it } from "vitest";
import type { Assessment } from "../../src/analysis/assessment.ts";
import { lengthsIn } from "../../src/inspection/lengths.ts";
import { placeAt } from "../../src/picture/screw/nutPlace.ts";
import { placeWords } from "../../src/report/placeWords.ts";
import { EVEN, exampleAssessment } from "./exampleAssessment.ts";

const wordsAt = (position: number, changes: Partial<Assessment> = {}, units: "mm" | "in" = "mm") => {
  const assessment = exampleAssessment(changes);
  const lengths = lengthsIn(units, assessment.resolution);
  return placeWords(placeAt(assessment, position, lengths), assessment, lengths);
};

const settingsWith = (changes: Partial<Assessment["settings"]>): Partial<Assessment> => ({
  settings: { ...exampleAssessment().settings, ...changes },
});

describe("a place in words", () => {
  it("tells the lost motion with how far it may be out, what adjusting leaves and where the nut would bind", () => {
    expect(wordsAt(110)).toEqual({
      lostMotion: "0.31 mm, give or take 0.01",
      left: "Taken up as far as the tight spot lets it, about 0.24 mm of lost motion would be left here.",
      binds: "Taken up until it fits here, it would bind from 0 mm to 97 mm and from 123 mm to 300 mm.",
    });
  });

  it("tells it in the reader's unit", () => {
    expect(wordsAt(110, {}, "in").left).toContain("about 0.0093 in of lost motion");
  });

  it("says that nothing binds where a nut fitted to the tight spot is", () => {
    expect(wordsAt(300).binds).toBe("Taken up until it fits here, it would bind nowhere.");
  });

  it("speaks of new nuts where the nut cannot be adjusted", () => {
    const { left, binds } = wordsAt(110, settingsWith({ adjustable: false }));
    expect(left).toMatch(/^With new nuts on this screw, about 0\.24 mm/);
    expect(binds).toMatch(/^A nut made to fit here would bind from 0 mm/);
  });

  it("says how much the nut has left where that is less than the tight spot lets it take up", () => {
    expect(wordsAt(110, settingsWith({ takeUpLeft: 0.03 })).left).toMatch(
      /^Taken up by the 0\.03 mm that the nut has left, about/,
    );
    expect(wordsAt(110, settingsWith({ takeUpLeft: 0 })).left).toMatch(
      /^The nut has nothing to take up\. As it is, about/,
    );
  });

  it("names no place to bind at where the readings show none", () => {
    expect(wordsAt(110, EVEN).binds).toContain("do not show a place where the nut would bind");
  });
});
