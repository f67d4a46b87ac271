import { describe, expect, test } from "vitest";
import { inPageColours } from "../../../src/app/ui/pageColours.ts";
import { LIGHT_PALETTE } from "../../../src/picture/palette.ts";
import { element, textElement } from "../../../src/picture/svg.ts";

describe("a picture in the page's colours", () => {
  test("has a colour of the page in place of each of its own", () => {
    const drawn = Object.values(LIGHT_PALETTE).map((fill) => element("rect", { fill }));
    const shown = inPageColours(drawn.join(""));
    expect(shown.match(/fill="var\(--[a-z-]+\)"/g)).toHaveLength(drawn.length);
    expect(new Set(shown.match(/var\(--[a-z-]+\)/g)).size).toBe(drawn.length);
    expect(inPageColours(element("path", { stroke: LIGHT_PALETTE.limit }))).toBe(
      '<path stroke="var(--limit)"/>',
    );
  });

  test("leaves what people wrote, and colours that are not of the palette", () => {
    const text = textElement(0, 0, `"${LIGHT_PALETTE.ink}"`, { size: 14, fill: "#abcdef" });
    expect(inPageColours(text)).toBe(text);
  });
});
