import { describe, expect, test } from "vitest";
import { EVERY_FIELD } from "../../../src/app/editing/fieldList.ts";
import { enterField, showField } from "../../../src/app/editing/fieldValues.ts";
import { describedSlide, newPendingInput, withSetupText } from "../../../src/app/editing/slideSetup.ts";
import { type EditorState, NO_PENDING_INPUT } from "../../../src/records/editorState.ts";
import { crossSlide } from "./crossSlide.ts";

const INSPECTION = crossSlide([
  {
    id: "first",
    taken: "2026-03-14",
    stage: "routine",
    method: "dial-pair",
    dial: { travelPerDivision: 0.02 },
    readings: [
      { position: 0, backlash: 0.2 },
      { position: 25, advancing: 3, retracting: 12 },
    ],
  },
]);

const STATE: EditorState = { inspection: INSPECTION, draft: NO_PENDING_INPUT };

function problemAt(path: string, text: string, survey: string | null = null): string {
  return showField(enterField(STATE, { survey, path }, text), { survey, path }).problem;
}

describe("the problem of a field is a sentence", () => {
  test.each([
    [
      "travel.from",
      "nought",
      'Travel from is "nought", which is not a number. Type it in digits, such as 0.25 or 12 thou.',
    ],
    ["screw.starts", "two", 'Starts is "two", which is not a number. Type the figure alone, in digits.'],
    ["screw.starts", "1.5", "Starts is 1.5; it must be a whole number."],
    ["backlashLimit", "-1", "Limit must be greater than zero."],
  ])("%s as %j", (path, text, words) => {
    expect(problemAt(path, text)).toBe(words);
  });

  test.each([
    ["endFloat", "0.01 -0.02", "End float of the screw must not be negative."],
    ["method", "push-pull", 'Reading 2 does not fit the method "push-pull".'],
    [
      "dial.travelPerDivision",
      "",
      "Travel per division is missing: readings in dial divisions need the travel that one division stands for.",
    ],
  ])("%s of a survey as %j", (path, text, words) => {
    expect(problemAt(path, text, "first")).toBe(words);
  });

  test("about the field that it contradicts, by its label", () => {
    expect(problemAt("travel.to", "-5")).toBe("Travel from must be less than Travel to.");
    expect(problemAt("workingRange.from", "20")).toBe("Working range to is needed, too.");
    const ranged = enterField(STATE, { survey: null, path: "workingRange.from" }, "20");
    const beyond = { survey: null, path: "workingRange.to" };
    expect(showField(enterField(ranged, beyond, "400"), beyond).problem).toBe(
      "Working range must lie within the travel.",
    );
  });

  test("about every field, and names no cell", () => {
    const figures = EVERY_FIELD.filter(({ kind }) => ["length", "lengths", "number"].includes(kind));
    expect(figures.length).toBeGreaterThan(20);
    for (const { path, label } of figures) {
      const problem = problemAt(path, "much");
      expect(problem.startsWith(`${label} is "much", which is not a number. Type `)).toBe(true);
      expect(problem).not.toMatch(/cell/i);
    }
  });

  test("about the setup fields, too", () => {
    const draft = withSetupText(
      withSetupText(newPendingInput("mm"), "travel.from", "10"),
      "travel.to",
      "5 fathoms",
    );
    const first = describedSlide(draft);
    expect(first.ok ? {} : Object.fromEntries(first.problems)).toEqual({
      "travel.to":
        'Travel to is "5 fathoms", and "fathoms" is not a known unit. Write it in mm, µm, in or thou.',
      "screw.lead": "Lead of the screw is needed.",
    });
    const second = describedSlide(withSetupText(withSetupText(draft, "travel.to", "5"), "screw.lead", "4"));
    expect(second.ok ? {} : Object.fromEntries(second.problems)).toEqual({
      "travel.to": "Travel from must be less than Travel to.",
    });
  });
});
