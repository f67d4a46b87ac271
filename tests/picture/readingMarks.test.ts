import { describe, expect, it } from "vitest";
import { profilePicture } from "../../src/picture/profilePicture.ts";
import { profileSvg } from "../../src/picture/profileSvg.ts";
import { sideBySide } from "../../src/picture/sideBySide.ts";
import { struckMarks } from "../../src/picture/struckMarks.ts";
import { exampleAssessment } from "../report/exampleAssessment.ts";

describe("marks that would hide one another", () => {
  it("stand side by side about their place, and others where they are", () => {
    const marks = [
      { x: 10, y: 5 },
      { x: 40, y: 5 },
      { x: 10.2, y: 5 },
      { x: 10, y: 5.1 },
      { x: 10, y: 30 },
    ];
    expect(sideBySide(marks, 6).map(({ x }) => x)).toEqual([4, 40, 10.2, 16, 10]);
  });
});

describe("struck readings", () => {
  const struck = [
    { position: 100, value: 0.2, from: [0] },
    { position: 200, value: 2, from: [1] },
  ];
  const picture = profilePicture(exampleAssessment({ struck }), "mm");
  const frame = {
    plot: { x: 0, y: 0, width: 300, height: 100 },
    at: ({ x, y }: { x: number; y: number }) => ({ x, y: 100 - y * 100 }),
  };

  it("are crosses where they were read", () => {
    expect(struckMarks(picture, frame)[0]).toBe("M96.5 76.5L103.5 83.5M96.5 83.5L103.5 76.5");
  });

  it("stand at the edge with an arrow where the plot does not reach them", () => {
    const [, mark] = struckMarks(picture, frame);
    expect(mark).toMatch(/^M196\.5 0L203\.5 7M196\.5 7L203\.5 0M/);
    expect(mark?.match(/M/g)).toHaveLength(4);
  });

  it("are drawn and told, and stretch no axis", () => {
    expect(picture.yAxis.to).toBe(profilePicture(exampleAssessment(), "mm").yAxis.to);
    expect(picture.description).toContain("26 readings at 13 stations, and 2 readings struck.");
    const crosses = (svg: string): number => svg.match(/<path d="[^"]*" stroke="#50647d"/g)?.length ?? 0;
    const without = crosses(profileSvg(profilePicture(exampleAssessment(), "mm")));
    expect(crosses(profileSvg(picture)) - without).toBe(2);
  });
});
