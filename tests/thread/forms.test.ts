import { describe, expect, it } from "vitest";
import { basicDimensions, type Limits } from "../../src/thread/form.ts";
import { FORMS, formNamed } from "../../src/thread/forms/index.ts";
import { cell, form, inch, metric, type Row, rowsOf } from "./reference.ts";

const inches = (millimetres: number | null): number => (millimetres ?? Number.NaN) / 25.4;

/** Half of the last digit of a table, with room for the traces of binary fractions. */
const LAST = { inch: 0.00005 + 1e-9, metric: 0.0005 + 1e-9 } as const;

function near(value: number, printed: number, half: number): void {
  expect(Math.abs(value - printed)).toBeLessThanOrEqual(half);
}

describe("Acme and stub Acme limits, for every size of the preferred series", () => {
  it.each([
    ["acme-29", "2G", "acme2G"],
    ["acme-29", "3G", "acme3G"],
    ["acme-29", "4G", "acme4G"],
    ["stub-acme-29", "2G", "stub2G"],
  ])("%s class %s agree with the standard's formulas to the last digit", (name, tolerance, table) => {
    const rows = rowsOf(table);
    expect(form(name).sizes).toHaveLength(rows.length);
    for (const row of rows) {
      const limits = form(name).limits(inch(cell(row, "d"), cell(row, "n")), tolerance);
      if (limits === null) throw new Error("There are no limits.");
      for (const [part, sizes] of Object.entries(limits))
        for (const [diameter, { max, min }] of Object.entries<Limits>(sizes)) {
          const key = `${part}${diameter.charAt(0).toUpperCase()}${diameter.slice(1)}`;
          expect(inches(max)).toBeCloseTo(cell(row, `${key}Max`), 8);
          expect(inches(min)).toBeCloseTo(cell(row, `${key}Min`), 8);
        }
    }
  });

  it.each([
    // Published: ASME B1.5, limits of general purpose Acme threads, class 2G.
    [1, 5, [0.892, 0.8726], [0.78, 0.7509]],
    [1 / 2, 10, [0.4443, 0.4306], [0.38, 0.3594]],
  ])("of %s-%s 2G are as published", (diameter, perInch, pitch, minor) => {
    const limits = form("acme-29").limits(inch(diameter, perInch), "2G");
    expect([limits?.screw.pitch.max, limits?.screw.pitch.min].map((each) => inches(each ?? null))).toEqual(
      pitch.map((each) => expect.closeTo(each, 8)),
    );
    expect([limits?.screw.minor.max, limits?.screw.minor.min].map((each) => inches(each ?? null))).toEqual(
      minor.map((each) => expect.closeTo(each, 8)),
    );
  });

  it("are not given for several starts, whose tolerances are wider", () => {
    expect(form("acme-29").limits(inch(1, 5, 2), "2G")).toBeNull();
  });
});

describe("basic sizes, for every size that a standard lists", () => {
  it.each([
    ["trapezoidal-30", "trapezoidal"],
    ["metric-60", "metric"],
  ])("of %s agree with the standard's formulas to the last digit", (name, table) => {
    const rows = rowsOf(table);
    expect(form(name).sizes).toHaveLength(rows.length);
    for (const row of rows) {
      const size = metric(cell(row, "d"), cell(row, "p"));
      expect(form(name).sizes).toContainEqual(
        expect.objectContaining({ diameter: size.diameter, pitch: size.pitch }),
      );
      check(name, row, form(name).diameters(size), LAST.metric);
    }
  });

  it.each([
    ["unified-60", "unified"],
    ["whitworth-55", "whitworth"],
  ])("of %s agree with the standard's formulas to the last digit", (name, table) => {
    const rows = rowsOf(table);
    expect(form(name).sizes).toHaveLength(rows.length);
    for (const row of rows) {
      const diameters = form(name).diameters(inch(cell(row, "d"), cell(row, "n")));
      const scaled = Object.fromEntries(Object.entries(diameters).map(([key, value]) => [key, value / 25.4]));
      check(name, row, scaled, LAST.inch);
    }
  });

  function check(name: string, row: Row, diameters: object, half: number): void {
    const values = diameters as Readonly<Record<string, number>>;
    const expected = "minor" in row ? { ...row, screwMinor: row.minor, nutMinor: row.minor } : row;
    const keys = Object.keys(expected).filter((key) => !["d", "p", "n", "minor"].includes(key));
    expect(keys.length, name).toBeGreaterThanOrEqual(3);
    for (const key of keys) near(values[key] ?? Number.NaN, (expected as Row)[key] ?? 0, half);
  }

  it.each([
    // Published: ISO 2904 (d2, D4, d3, D1), ISO 724 (d2, D1), BS 84 (effective, minor).
    ["trapezoidal-30", metric(8, 1.5), { pitch: 7.25, nutMajor: 8.3, screwMinor: 6.2, nutMinor: 6.5 }],
    ["trapezoidal-30", metric(24, 5), { pitch: 21.5, nutMajor: 24.5, screwMinor: 18.5, nutMinor: 19 }],
    ["trapezoidal-30", metric(40, 7), { pitch: 36.5, nutMajor: 41, screwMinor: 32, nutMinor: 33 }],
    ["trapezoidal-30", metric(100, 12), { pitch: 94, nutMajor: 101, screwMinor: 87, nutMinor: 88 }],
    ["metric-60", metric(10, 1.5), { pitch: 9.026, nutMinor: 8.376 }],
    ["metric-60", metric(20, 2.5), { pitch: 18.376, nutMinor: 17.294 }],
  ])("of %s are as published", (name, size, published) => {
    const diameters = form(name).diameters(size) as unknown as Readonly<Record<string, number>>;
    for (const [key, value] of Object.entries(published)) near(diameters[key] ?? 0, value, LAST.metric);
  });

  it.each([
    ["unified-60", inch(1 / 2, 13), 0.45, 0.4167],
    ["whitworth-55", inch(1 / 4, 20), 0.218, 0.186],
    ["stub-acme-29", inch(1, 5), 0.94, 0.88],
  ] as const)("of %s in inches are as published", (name, size, pitch, minor) => {
    const diameters = form(name).diameters(size);
    near(diameters.pitch / 25.4, pitch, LAST.inch);
    near(diameters.nutMinor / 25.4, minor, LAST.inch);
  });

  it("leave clearance at crest and root of every flat form, and none at the flanks", () => {
    for (const each of FORMS.filter(({ rounding }) => rounding === null)) {
      const { screw, nut } = basicDimensions(each, metric(30, 4));
      expect(nut.major.min).toBeGreaterThan(screw.major.max ?? Number.NaN);
      expect(screw.minor.max).toBeLessThan(nut.minor.min ?? Number.NaN);
      expect(nut.pitch.min).toBe(screw.pitch.max);
    }
  });
});

describe("the list of forms", () => {
  it("finds each by its name, and tells which there are", () => {
    for (const each of FORMS) expect(formNamed(each.name)).toEqual({ ok: true, value: each });
    const wrong = formNamed("round-30");
    expect(wrong.ok ? "" : wrong.problem.cure).toContain("trapezoidal-30");
  });
});
