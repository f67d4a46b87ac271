import { describe, expect, it } from "vitest";
import { leastLostMotion, nameOf, placesOf } from "../../../src/analysis/checks/check.ts";
import { lengthsIn } from "../../../src/inspection/lengths.ts";
import { pushPull } from "../examples.ts";
import { surveyed } from "./checkInput.ts";

const reading = (position: number) => ({ position, value: 0.2, from: [6, 9] });

describe("the name of a reading", () => {
  it("counts from 1, and tells the place in the reader's unit", () => {
    expect(nameOf(reading(120), lengthsIn("mm"))).toBe("Reading 7 at 120 mm");
    expect(nameOf(reading(127), lengthsIn("in"))).toBe("Reading 7 at 5 in");
  });
});

describe("the places of some readings", () => {
  it("are told once each, four at most", () => {
    const places = (...positions: readonly number[]) => placesOf(positions.map(reading), lengthsIn("mm"));
    expect(places(10, 10, 20)).toBe("10 mm, 20 mm");
    expect(places(10, 20, 30, 40)).toBe("10 mm, 20 mm, 30 mm, 40 mm");
    expect(places(10, 20, 30, 40, 50)).toBe("10 mm, 20 mm, 30 mm, 40 mm …");
  });
});

describe("the station with the least lost motion", () => {
  it("is not one below nothing", () => {
    const of = (...values: readonly number[]) =>
      leastLostMotion(surveyed(pushPull(values.map((value, i) => [50 * i, value] as const))).stations);
    expect(of(0.2, 0.1, 0.3)?.position).toBe(50);
    expect(of(0.2, -0.1, 0.1)?.position).toBe(100);
    expect(of(-0.2, -0.1)).toBeUndefined();
  });
});
