import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { clearanceAtLimits, runningFit } from "../../../src/thread/make/fit.ts";
import { passTable } from "../../../src/thread/make/passes.ts";
import { areaTo, depthOfShare, grooveSection } from "../../../src/thread/make/section.ts";
import { tapFor } from "../../../src/thread/make/tap.ts";
import { toolFor } from "../../../src/thread/make/tool.ts";
import { form, inch, metric } from "../reference.ts";

const tr = form("trapezoidal-30");
const tangent = (degrees: number): number => Math.tan((degrees * Math.PI) / 180);

describe("the running fit", () => {
  it("thins the screw's thread by the clearance, which moves its pitch line in by clearance ÷ tan α", () => {
    const fit = runningFit(tr, metric(24, 5), { from: 0.025, to: 0.05 });
    expect(fit.screwPitch?.max).toBeCloseTo(21.5 - 0.025 / tangent(15), 9);
    expect(fit.screwPitch?.min).toBeCloseTo(21.5 - 0.05 / tangent(15), 9);
    expect(fit.thickness).toEqual({ max: 2.475, min: 2.45 });
  });

  it("of a square thread is in its thickness alone", () => {
    const fit = runningFit(form("square"), metric(24, 5), { from: 0.03, to: 0.06 });
    expect([fit.screwPitch, fit.thickness.max]).toEqual([null, 2.47]);
  });

  it("is far closer than class 2G, which lets 1-5 Acme have 0.05 to 0.31 mm", () => {
    const acme = form("acme-29");
    const limits = acme.limits(inch(1, 5), "2G");
    if (limits === null) throw new Error("There are no limits.");
    const clearance = clearanceAtLimits(acme, limits);
    // From the published limits: nut 0.9000 to 0.9194 in, screw 0.8920 to 0.8726 in.
    expect(clearance?.from).toBeCloseTo((0.9 - 0.892) * 25.4 * tangent(14.5), 9);
    expect(clearance?.to).toBeCloseTo((0.9194 - 0.8726) * 25.4 * tangent(14.5), 9);
  });
});

describe("the single-point tool", () => {
  const cut = { pitchDiameter: 21.5, root: 18.5, crest: 24, stands: "axial", workingClearance: 3 } as const;

  it("has the flat of ISO 2901 for a basic thread: 0.366 P − 0.536 × crest clearance", () => {
    expect(toolFor(tr, metric(24, 5), cut).tipWidth).toBeCloseTo(0.366025 * 5 - 0.535898 * 0.25, 5);
  });

  it("has the flat of ASME B1.5: 0.3707 P − 0.2586 × (minor allowance − pitch allowance)", () => {
    const tool = toolFor(form("acme-29"), inch(1, 5), {
      ...cut,
      pitchDiameter: 0.892 * 25.4,
      root: 0.78 * 25.4,
      crest: 25.4,
    });
    expect((tool.tipWidth ?? 0) / 25.4).toBeCloseTo(0.3707 * 0.2 - 0.2586 * (0.02 - 0.008), 4);
  });

  it("clears the helix at the core on the leading side and at the outside on the other", () => {
    const tool = toolFor(tr, metric(24, 5), cut);
    expect(tangent(tool.leadingClearance - 3)).toBeCloseTo(5 / (Math.PI * 18.5), 9);
    expect(tangent(3 - tool.trailingClearance)).toBeCloseTo(5 / (Math.PI * 24), 9);
    expect(tool.depth).toBe(2.75);
  });

  it("is narrower by the cosine of the lead angle where it stands square to the helix", () => {
    const axial = toolFor(tr, metric(24, 5, 3), cut).tipWidth ?? 0;
    const square = toolFor(tr, metric(24, 5, 3), { ...cut, stands: "square" }).tipWidth ?? 0;
    expect(square / axial).toBeCloseTo(Math.cos(Math.atan(15 / (Math.PI * 21.5))), 9);
  });

  it("has a radius for a rounded root, and the flat of P ÷ 8 for a metric nut", () => {
    const size = metric(20, 2.5);
    const metric60 = form("metric-60");
    const { pitch, screwMinor, nutMinor } = metric60.diameters(size);
    const screw = toolFor(metric60, size, { ...cut, pitchDiameter: pitch, root: screwMinor, crest: 20 });
    expect([screw.tipWidth, screw.tipRadius]).toEqual([null, expect.closeTo(0.144338 * 2.5, 5)]);
    const nut = toolFor(metric60, size, { ...cut, pitchDiameter: pitch, root: 20, crest: nutMinor });
    expect(nut.tipWidth).toBeCloseTo(2.5 / 8, 9);
  });
});

describe("the section of a thread", () => {
  it("is that of the trapezium between bore and root", () => {
    const section = grooveSection(tr, 5, 21.5, 19, 24.5);
    const mouth = 2.5 + 2.5 * tangent(15);
    const floor = 2.5 - 3 * tangent(15);
    expect(section.mouth).toBeCloseTo(mouth, 12);
    expect(areaTo(section, 2.75)).toBeCloseTo((2.75 * (mouth + floor)) / 2, 9);
  });

  it("is reached at the depth that its share belongs to", () => {
    fc.assert(
      fc.property(
        fc.constantFrom("trapezoidal-30", "square", "metric-60", "acme-29"),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (name, share) => {
          const { pitch, nutMajor, nutMinor } = form(name).diameters(metric(30, 5));
          const section = grooveSection(form(name), 5, pitch, nutMinor, nutMajor);
          const depth = depthOfShare(section, share);
          expect(areaTo(section, depth)).toBeCloseTo(share * areaTo(section, section.depth), 9);
        },
      ),
    );
  });
});

describe("a tap made for a nut", () => {
  const nut = { major: 24.5, pitch: 21.5, minor: 19 };
  const plan = { chip: 0.05, flutes: 4, leadInTurns: 2, fullTurns: 4 };

  it("has as few steps of equal section as keep every chip within 0.05 mm", () => {
    const made = tapFor(tr, metric(24, 5), nut, 18.5, plan);
    if (!made.ok) throw new Error(made.problem.what);
    const { steps, bore, core, leadIn, full } = made.value;
    const width = (diameter: number): number => 2.5 + (21.5 - diameter) * tangent(15);
    const areas = steps.map(({ diameter }, index) => {
      const before = steps[index - 1]?.diameter ?? 19;
      return ((diameter - before) / 2) * ((width(diameter) + width(before)) / 2);
    });
    for (const area of areas) expect(area).toBeCloseTo(areas[0] ?? 0, 9);
    expect(steps.at(-1)?.diameter).toBeCloseTo(24.5, 9);
    for (const { chip } of steps) expect(chip).toBeLessThanOrEqual(0.05 + 1e-9);
    const fewer = tapFor(tr, metric(24, 5), nut, 18.5, { ...plan, steps: steps.length - 1 });
    expect(fewer.ok && Math.max(...fewer.value.steps.map(({ chip }) => chip))).toBeGreaterThan(0.05);
    expect([bore, core, leadIn, full]).toEqual([19, 18.5, 10, 20]);
  });

  it("tapers each step's lead-in by its rise over its length", () => {
    const made = tapFor(tr, metric(24, 5), nut, 18.5, { ...plan, steps: 3 });
    const [first] = made.ok ? made.value.steps : [];
    if (first === undefined) throw new Error("There is no step.");
    expect(tangent(first.taper)).toBeCloseTo((first.diameter - 19) / 2 / 10, 9);
    expect(first.chip).toBeCloseTo((first.diameter - 19) / 2 / 8, 9);
  });

  it("is refused where its chips would be too thin to count the steps", () => {
    const made = tapFor(tr, metric(24, 5), nut, 18.5, { ...plan, chip: 0.0001 });
    expect(made.ok ? "" : made.problem.cure).toContain("thicker chip");
  });
});

describe("the table of passes", () => {
  it("reaches the depth in equal sections, and along the flank by 1 ÷ cos α as far", () => {
    const section = grooveSection(tr, 5, 21.5, 24, 18.5);
    const passes = passTable(tr, section);
    const tip = 2.5 - 3 * tangent(15);
    const area = (depth: number): number => tip * depth + depth * depth * tangent(15);
    passes.forEach(({ depth, alongFlank, sideways }, index) => {
      expect(area(depth) / area(2.75)).toBeCloseTo((index + 1) / passes.length, 9);
      expect(alongFlank).toBeCloseTo(depth / Math.cos(Math.PI / 12), 9);
      expect(Math.hypot(depth, sideways)).toBeCloseTo(alongFlank, 9);
    });
    expect(passes.at(-1)?.depth).toBeCloseTo(2.75, 9);
    expect(passes[0]?.depth).toBeLessThanOrEqual(0.25 + 1e-9);
  });
});
