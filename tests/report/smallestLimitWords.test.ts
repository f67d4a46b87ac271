import { describe, expect, it } from "vitest";
import { lengthsIn } from "../../src/inspection/lengths.ts";
import { keptLimit, smallestLimitWords, toldApart } from "../../src/report/smallestLimitWords.ts";
import { assess } from "../analysis/knownDraws.ts";

const MILLIMETRES = lengthsIn("mm", 0.01);
const ASSESSMENT = { ...assess(), reasons: [] };
const LIMITS = [
  { action: "leave-alone", possible: 0.24, sure: 0.251 },
  { action: "adjust-nut", possible: 0.15, sure: 0.18 },
  { action: "remake-screw", possible: 0.035, sure: 0.035 },
] as const;

describe("a limit that is kept", () => {
  it("is told rounded up, so that it is kept as told", () => {
    expect(keptLimit(0.1801, MILLIMETRES)).toBe("0.19 mm");
    expect(keptLimit(0.18, MILLIMETRES)).toBe("0.18 mm");
    expect(keptLimit(0.1 + 0.2, MILLIMETRES)).toBe("0.30 mm");
    expect(keptLimit(25.4 * 0.0061, lengthsIn("in", 0.0254))).toBe("0.007 in");
  });
});

describe("limits that steps keep", () => {
  it("are told in one sentence, from least to most work", () => {
    expect(smallestLimitWords(LIMITS, ASSESSMENT, MILLIMETRES)).toBe(
      "These limits would very likely be kept: 0.26 mm or more with the slide left alone, 0.18 mm with the nut adjusted and 0.04 mm with the screw remade, and nuts to match.",
    );
  });

  it.each(["coverage", "unread-end", "checks"] as const)(
    "are no verdict yet where there is none for %s",
    (reason) => {
      const words = smallestLimitWords(LIMITS.slice(0, 1), { ...ASSESSMENT, reasons: [reason] }, MILLIMETRES);
      expect(words).toBe(
        "These limits would very likely be kept: 0.26 mm or more with the slide left alone. That is what the readings point to; more is needed before it is a verdict.",
      );
    },
  );

  it("are told only where their figures differ from that of less work", () => {
    const close = [
      ...LIMITS.slice(0, 1),
      { action: "correct-end-float", possible: 0.23, sure: 0.2502 },
    ] as const;
    expect(toldApart([...close, ...LIMITS.slice(1)], MILLIMETRES)).toEqual(LIMITS);
  });
});
