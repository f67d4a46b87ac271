import { describe, expect, it } from "vitest";
import { profilePicture } from "../../src/picture/profilePicture.ts";
import { profileText } from "../../src/picture/profileText.ts";
import { EVEN, exampleAssessment } from "../report/exampleAssessment.ts";

const lines = profileText(profilePicture(exampleAssessment(), "mm"), 80);

describe("the profile in characters", () => {
  it("keeps within the width", () => {
    for (const line of lines) expect([...line].length).toBeLessThanOrEqual(80);
  });

  it("names the limit beside its line and hatches what exceeds it", () => {
    const limit = lines.find((line) => line.endsWith("limit 0.15 mm"));
    expect(limit).toMatch(/╌{5,}.*\/{10,}.*╌{5,}/);
  });

  it("points at the loosest spot from above and at the tight spot from below", () => {
    const row = (character: string): number => lines.findIndex((line) => line.includes(character));
    const highest = lines.findIndex((line) => line.includes("•"));
    expect(row("▼")).toBe(highest - 1);
    const tight = lines[row("▲")] ?? "";
    expect(tight.trimEnd().endsWith("▲")).toBe(true);
    expect((lines[row("▲") - 1] ?? "").trimEnd().endsWith("•")).toBe(true);
  });

  it("points at no spot where the readings show none", () => {
    const even = profileText(profilePicture(exampleAssessment(EVEN), "mm"), 80).join("\n");
    expect(even).not.toMatch(/[▲▼]/);
    expect(even).toContain("• 0.20 mm, the same all along");
  });

  it("draws every column of the profile once or more", () => {
    const columns = new Set(
      lines.flatMap((line) => [...line].flatMap((cell, at) => (cell === "•" ? [at] : []))),
    );
    expect(columns.size).toBeGreaterThan(50);
  });
});
