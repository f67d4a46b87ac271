import { expect, it } from "vitest";
import { shownPart } from "../../../../src/app/results/chart/shownPart.ts";
import { profilePicture } from "../../../../src/picture/profilePicture.ts";
import { exampleAssessment } from "../../../report/exampleAssessment.ts";

it("the picture of a part of the travel has an axis and marks of its own", () => {
  const struck = [
    { position: 120, value: 0.4, from: [0] },
    { position: 280, value: 0.4, from: [1] },
  ];
  const part = shownPart(profilePicture(exampleAssessment({ struck }), "mm"), { from: 100, to: 200 });
  expect([part.xAxis.from, part.xAxis.to]).toEqual([100, 200]);
  expect(part.xAxis.ticks.map(({ label }) => label)).toContain("150");
  expect(part.spots.map(({ name }) => name)).toEqual(["loosest spot"]);
  expect(new Set(part.readings.map(({ x }) => x))).toEqual(new Set([100, 125, 150, 175, 200]));
  expect(part.struck.map(({ x }) => x)).toEqual([120]);
  expect(part.wornZones).toMatchObject([{ from: 100, to: 145 }]);
});
