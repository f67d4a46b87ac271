import { expect, it } from "vitest";
import { withUnits } from "../../../src/report/document/pieces.ts";

it.each([
  ["worn by 0.15 mm from 3 in to 4.35 in", "worn by 0.15_mm from 3_in to 4.35_in"],
  ["0.01 mm at 21 °C after 1200 h", "0.01_mm at 21_°C after 1200_h"],
  ["2 indicators, mm", "2 indicators, mm"],
])("keeps figures with their units: %s", (text, kept) => {
  expect(withUnits(text)).toBe(kept.replaceAll("_", "\u00a0"));
});
