import { expect, it } from "vitest";
import { columnFigures } from "../../src/report/columnFigures.ts";

it("gives every figure as many decimals as the longest", () => {
  expect(columnFigures([1, 16.5, -0.25])).toEqual(["1.00", "16.50", "-0.25"]);
  expect(columnFigures([0, 420])).toEqual(["0", "420"]);
  expect(columnFigures([])).toEqual([]);
});

it("leaves out the traces of binary fractions", () => {
  expect(columnFigures([0.1 + 0.2, 1])).toEqual(["0.3", "1.0"]);
  expect(columnFigures([1e-9])).toEqual(["0"]);
});
