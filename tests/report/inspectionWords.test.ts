import { expect, it } from "vitest";
import { dateWords, dayWritten, timeWords } from "../../src/report/inspectionWords.ts";

it.each([
  ["2026-03-14", "14 March 2026"],
  ["2025-12-01T23:30:00-05:00", "1 December 2025"],
])("writes %s as %s, wherever it is read", (date, words) => {
  expect(dateWords(date)).toBe(words);
});

it("says of a log without dates that it has none", () => {
  expect(dateWords("1970-01-01")).toBe("no date given");
  expect(dayWritten("1970-01-01")).toBe("no date given");
  expect(dayWritten("2026-03-14T09:30:12Z")).toBe("2026-03-14");
});

it.each([
  ["2026-03-14T09:30:12+01:00", "09:30"],
  ["half past nine", "half past nine"],
])("writes the time %s as %s", (time, words) => {
  expect(timeWords(time)).toBe(words);
});
