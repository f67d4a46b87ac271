import fc from "fast-check";
import { expect, it } from "vitest";
import { cssText } from "../../../src/report/document/documentShell.ts";

/** A string token as CSS Syntax Module Level 3, 4.3.5 and 4.3.7, has it read. */
function readString(token: string): string {
  return token
    .slice(1, -1)
    .replace(/\\([0-9a-f]{1,6})\s?/gi, (_, code) => String.fromCodePoint(Number.parseInt(code, 16)));
}

it("reads back as the text that it was made of", () => {
  fc.assert(
    fc.property(fc.string({ unit: "binary" }), (text) => {
      // No style sheet can hold the number 0.
      fc.pre(!text.includes("\0"));
      expect(readString(cssText(text))).toBe(text);
    }),
  );
});

it("holds nothing that could end the string, the line or the style sheet", () => {
  fc.assert(
    fc.property(fc.string({ unit: "binary" }), (text) => {
      expect(cssText(text)).toMatch(/^"[A-Za-z0-9 \\]*"$/);
    }),
  );
});
