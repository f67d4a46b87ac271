import { describe, expect, it } from "vitest";
import { profilePicture } from "../../src/picture/profilePicture.ts";
import { EVEN, exampleAssessment } from "../report/exampleAssessment.ts";

const assessment = exampleAssessment();

describe("the picture of a profile", () => {
  it("shows every reading where it was taken", () => {
    const { readings } = profilePicture(assessment, "mm");
    expect(readings).toHaveLength(26);
    expect(readings[0]).toEqual({ x: 0, y: expect.closeTo(0.104, 3) });
  });

  it("is in the reader's unit throughout", () => {
    const millimetres = profilePicture(assessment, "mm");
    const inches = profilePicture(assessment, "in");
    expect(inches.limit.y * 25.4).toBeCloseTo(millimetres.limit.y, 12);
    expect(inches.xAxis.to * 25.4).toBeCloseTo(300, 6);
    expect(inches.spots[0]).toEqual({
      name: "loosest spot",
      x: expect.closeTo(110 / 25.4, 12),
      y: expect.closeTo(0.31 / 25.4, 12),
      label: "loosest spot 0.0122 in at 4.35 in",
    });
    expect(inches.yAxis.label).toBe("Lost motion (in)");
  });

  it("has room above the limit and everything read, from zero", () => {
    const { yAxis } = profilePicture(
      exampleAssessment({ settings: { ...assessment.settings, limit: 0.6 } }),
      "mm",
    );
    expect(yAxis.from).toBe(0);
    expect(yAxis.to).toBeGreaterThan(0.6);
  });

  it("hatches the profile from crossing to crossing of the limit", () => {
    const [part, ...others] = profilePicture(assessment, "mm").exceeding;
    // 0.11 + 0.2 exp(-((x - 110) / 35)²) = 0.15 where |x - 110| = 35 √ln 5 = 44.40.
    expect(others).toEqual([]);
    expect(part?.[0]?.x).toBeCloseTo(65.6, 0);
    expect(part?.at(-1)?.x).toBeCloseTo(154.4, 0);
  });

  it("hatches nothing outside the working range", () => {
    const settings = { ...assessment.settings, workingRange: { from: 180, to: 300 } };
    const picture = profilePicture(exampleAssessment({ settings }), "mm");
    expect(picture.exceeding).toEqual([]);
    expect(picture.workingRange).toMatchObject({ from: 180, to: 300 });
  });

  it("marks no working range where it is the whole travel", () => {
    expect(profilePicture(assessment, "mm").workingRange).toBeNull();
  });

  it("names new nuts where the nut cannot be adjusted", () => {
    const settings = { ...assessment.settings, adjustable: false };
    const { afterAdjusting } = profilePicture(exampleAssessment({ settings }), "mm");
    expect(afterAdjusting?.label).toBe("what new nuts on this screw would leave");
  });

  it("leaves out a curve that would lie on the profile", () => {
    const changes = { profileAfterAdjusting: assessment.profile };
    expect(profilePicture(exampleAssessment(changes), "mm").afterAdjusting).toBeNull();
  });

  it("tells in words what it shows", () => {
    const { description } = profilePicture(assessment, "mm");
    expect(description).toContain("26 readings at 13 stations");
    expect(description).toContain("tight spot, 0.11 mm at about 300 mm");
    expect(description).toContain("exceeds it from about 66 mm to 154 mm");
    expect(description).toContain("Adjusting the nut would leave 0.24 mm");
    expect(description).toContain("worn by at least 0.15 mm from about 75 mm to 145 mm");
  });

  it("marks no spots where the readings do not show that lost motion differs, and says so", () => {
    const even = profilePicture(exampleAssessment(EVEN), "mm");
    expect(even.spots).toEqual([]);
    expect(even.median.label).toBe("0.20 mm, the same all along");
    expect(even.title).toBe("Lost motion: 0.20 mm, the same all along");
    expect(even.description).toContain("The same everywhere as far as the readings show, 0.20 mm");
    expect(even.description).not.toMatch(/tight spot|loosest spot/);
  });

  it.each([
    ["it may be by chance", { unevenChance: 0.94 }],
    ["it may be nothing", { uneven: { value: 0.2, low: 0.004, high: 0.22 } }],
  ])("marks no spots where lost motion seems to differ but %s", (_, changes) => {
    const open = profilePicture(exampleAssessment(changes), "mm");
    expect(open.spots).toEqual([]);
    expect(open.median.label).toBe("0.11 to 0.31 mm along the travel");
    expect(open.description).toContain(
      "Between 0.11 mm and 0.31 mm; whether it differs along the travel the readings do not show",
    );
  });

  it("is a plain object that survives being written and read", () => {
    const picture = profilePicture(assessment, "mm");
    expect(JSON.parse(JSON.stringify(picture))).toEqual(picture);
  });
});
