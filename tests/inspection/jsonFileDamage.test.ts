import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { damagedAt } from "../../src/inspection/jsonFile.ts";

describe("the place where JSON is damaged", () => {
  // The mark ¦ shows the place and is taken out.
  test.each([
    "¦",
    "{¦",
    "[1, 2¦",
    '{"a": ¦',
    '{"a": {"b": [true, null¦',
    '{"a": 1 ¦"b": 2}',
    '{"a": 1, ¦}',
    "[1, ¦]",
    "[1 ¦2]",
    '{"a" ¦1}',
    "{¦a: 1}",
    '{"a": ¦tru}',
    '{"a": ¦"not closed}',
    '["one\\n", ¦"bad \\x"]',
    "[0¦1]",
    "[¦.5]",
    '{"a": 1}¦}',
    "[1] ¦[2]",
    "¦]",
    '{"a": [1¦}',
    "[{}¦:1]",
  ])("%s", (marked) => {
    expect(damagedAt(marked.replace("¦", ""))).toBe(marked.indexOf("¦"));
  });

  test("is the end of whatever was cut off, and never within sound JSON", () => {
    fc.assert(
      fc.property(fc.json(), fc.nat(), (json, cut) => {
        expect(damagedAt(json)).toBe(json.length);
        const end = cut % json.length;
        const place = damagedAt(json.slice(0, end));
        expect(place).toBeLessThanOrEqual(end);
        expect(json.slice(place, end)).not.toMatch(/^[\]}:,]/);
      }),
    );
  });

  test("is found behind a string of many megabytes", () => {
    const picture = "x".repeat(20_000_000);
    expect(damagedAt(`["${picture}", oops]`)).toBe(picture.length + 5);
  });
});
