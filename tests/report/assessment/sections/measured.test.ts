import { expect, it } from "vitest";
import { conditionWords } from "../../../../src/report/assessment/sections/measured.ts";

it.each([
  [undefined, "none noted"],
  ["", "none noted"],
  [{}, "none noted"],
  ["Cold shop.", "Cold shop."],
  [{ temperature: 23.5, expansion: 3.5 }, "23.5 °C, the screw expands more than the scale by 3.5 µm/(m·K)"],
  [{ oil: "fresh", shims: [1, 2] }, "oil: fresh, shims: [1,2]"],
  [["warm", 1], '["warm",1]'],
])("writes %j as words", (conditions, words) => {
  expect(conditionWords(conditions)).toBe(words);
});
