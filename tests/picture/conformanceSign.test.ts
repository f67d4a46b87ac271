import { expect, test } from "vitest";
import { conformanceSign } from "../../src/picture/conformanceSign.ts";

test("each answer has a sign of its own shape, in the colour of its text, and is hidden from screen readers", () => {
  const signs = (["proven", "disproven", "not proven"] as const).map(conformanceSign);
  const shapes = signs.map((sign) => [...sign.matchAll(/ d="([^"]*)"/g)].map(([, path]) => path).join());
  expect(new Set(shapes).size).toBe(3);
  for (const sign of signs) {
    expect(sign).toContain('stroke="currentColor"');
    expect(sign).toContain('aria-hidden="true"');
    expect(sign).not.toMatch(/#[0-9a-f]{3}/);
  }
});
