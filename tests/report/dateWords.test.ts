import { expect, it } from "vitest";
import { dateWords, timeWords } from "../../src/report/dateWords.ts";

it.each([
  ["2026-03-14", "14 March 2026"],
  ["2025-12-01T23:30:00-05:00", "1 December 2025"],
])("writes %s as %s, wherever it is read", (date, words) => {
  expect(dateWords(date)).toBe(words);
});

it.each([
  ["2026-03-14T09:30:12+01:00", "09:30"],
  ["half past nine", "half past nine"],
])("writes the time %s as %s", (time, words) => {
  expect(timeWords(time)).toBe(words);
});
