import { describe, expect, it } from "vitest";
import type { Assessment } from "../../src/analysis/assessment.ts";
import { profileFrame } from "../../src/picture/profileFrame.ts";
import { profileLabels } from "../../src/picture/profileLabels.ts";
import { profilePicture } from "../../src/picture/profilePicture.ts";
import { profileSvg } from "../../src/picture/profileSvg.ts";
import { EVEN, exampleAssessment } from "../report/exampleAssessment.ts";

const assessment = exampleAssessment();
const svg = profileSvg(profilePicture(assessment, "mm"));

const at = (value: number): Partial<Assessment> => ({
  profile: assessment.profile.map((point) => ({ ...point, backlash: value, low: value, high: value })),
  profileAfterAdjusting: assessment.profile.map(({ position }) => ({ position, backlash: value / 3 })),
  tightSpot: { position: 0, backlash: value },
  loosestSpot: { position: 2.5, backlash: value },
  wornZones: [],
});

describe("the profile as SVG", () => {
  it("is one well-formed document that needs nothing else", () => {
    const open: string[] = [];
    for (const [, closing, name, alone] of svg.matchAll(/<(\/?)([a-z]+)[^>]*?(\/?)>/g)) {
      if (closing === "/") expect(open.pop()).toBe(name);
      else if (alone !== "/") open.push(name ?? "");
    }
    expect(open).toEqual([]);
    expect(svg).not.toMatch(/href=|<script|<style|NaN|Infinity|undefined/);
  });

  it("is named and described for screen readers", () => {
    expect(svg).toContain('role="img"');
    expect(svg).toContain("<title>Lost motion: 0.11 mm at the tight spot, 0.31 mm at the loosest</title>");
    expect(svg).toMatch(/<desc>Lost motion against position/);
  });

  it("hatches what exceeds the limit, for print without colour", () => {
    expect(svg).toContain("url(#exceeding-the-limit)");
    const within = profileSvg(profilePicture(exampleAssessment(at(0.1)), "mm"));
    expect(within).not.toContain("url(#exceeding-the-limit)");
  });

  it("draws the screw only where it shows wear", () => {
    expect(svg).toContain("screw worn by at least 0.15 mm");
    expect(profileSvg(profilePicture(exampleAssessment(at(0.1)), "mm"))).not.toContain("screw worn");
  });

  it("escapes what is not its own", () => {
    const picture = { ...profilePicture(assessment, "mm"), title: 'Play < 0.1 & "more"' };
    expect(profileSvg(picture)).toContain("Play &lt; 0.1 &amp; &quot;more&quot;");
  });
});

describe("the labels of the plot", () => {
  it.each([
    ["worn in one place", {}],
    ["even, with both spots nearly in one place", at(0.12)],
    ["lying on the limit", at(0.15)],
    ["close to nothing", at(0.02)],
    ["with the loosest spot at the end of the travel", { loosestSpot: { position: 300, backlash: 0.31 } }],
  ])("all find a place without meeting on a profile %s", (_, changes) => {
    const picture = profilePicture(exampleAssessment(changes), "mm");
    const labels = profileLabels(picture, profileFrame(picture));
    expect(labels.map(({ role }) => role).sort()).toEqual([
      "afterAdjusting",
      "limit",
      "median",
      "spot",
      "spot",
    ]);
  });

  it("name the level and no spot where the readings show none, with none in bold", () => {
    const even = profileSvg(profilePicture(exampleAssessment(EVEN), "mm"));
    expect(even).toContain(">0.20 mm, the same all along</text>");
    expect(even).not.toMatch(/tight spot|loosest spot/);
    expect(even.match(/font-weight="600"/g)).toHaveLength(1);
  });
});
