import { describe, expect, it } from "vitest";
import { nutProfile, type ProfilePoint, screwProfile } from "../../src/thread/profile.ts";
import { form, inch, metric } from "./reference.ts";

const slopeBetween = (a: ProfilePoint, b: ProfilePoint): number =>
  (Math.atan2(b.x - a.x, b.radius - a.radius) * 180) / Math.PI;

/** Where a profile crosses a radius, to the right of the middle. */
function crossing(profile: readonly ProfilePoint[], radius: number): number {
  const right = profile.filter(({ x }) => x >= 0);
  const index = right.findIndex((point) => point.radius >= radius);
  const [a, b] = [right[index - 1], right[index]];
  if (a === undefined || b === undefined) throw new Error("The profile does not cross it.");
  return a.x + ((radius - a.radius) / (b.radius - a.radius)) * (b.x - a.x);
}

describe("the profile of a screw", () => {
  it.each([
    ["trapezoidal-30", metric(24, 5)],
    ["acme-29", inch(1, 5)],
    ["square", metric(24, 5)],
    ["metric-60", metric(20, 2.5)],
    ["whitworth-55", inch(1, 8)],
  ])("of %s is half a pitch wide at the pitch line, from crest to root", (name, size) => {
    const { pitch, screwMajor, screwMinor } = form(name).diameters(size);
    const profile = screwProfile(form(name), size.pitch, { major: screwMajor, pitch, minor: screwMinor });
    if (name !== "square") expect(crossing(profile, pitch / 2)).toBeCloseTo(size.pitch / 4, 6);
    const radii = profile.map(({ radius }) => radius);
    expect([Math.max(...radii), Math.min(...radii)]).toEqual(
      [screwMajor / 2, screwMinor / 2].map((each) => expect.closeTo(each, 9)),
    );
    expect([profile[0]?.x, profile.at(-1)?.x]).toEqual([-size.pitch / 2, size.pitch / 2]);
  });

  it("of a Whitworth thread has straight flanks between its arcs, at 27.5°", () => {
    const size = inch(1, 8);
    const { pitch, screwMajor, screwMinor } = form("whitworth-55").diameters(size);
    const right = screwProfile(form("whitworth-55"), size.pitch, {
      major: screwMajor,
      pitch,
      minor: screwMinor,
    }).filter(({ x }) => x >= 0);
    const [a, b] = [right.findLast((p) => p.radius < pitch / 2), right.find((p) => p.radius > pitch / 2)];
    if (a === undefined || b === undefined) throw new Error("There is no flank.");
    expect(slopeBetween(a, b)).toBeCloseTo(27.5, 2);
  });
});

describe("the profile of a nut", () => {
  it("lies on the flanks of the screw and clears its crest and root", () => {
    const size = metric(24, 5);
    const tr = form("trapezoidal-30");
    const nut = nutProfile(tr, 5, { major: 24.5, pitch: 21.5, minor: 19 });
    expect(crossing(nut, 21.5 / 2)).toBeCloseTo(1.25, 9);
    expect(Math.min(...nut.map(({ radius }) => radius))).toBe(9.5);
    expect(tr.diameters(size).screwMinor / 2).toBe(9.25);
  });
});
