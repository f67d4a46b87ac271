import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { lengthUnit } from "../../src/intake/lengthUnit.ts";
import { readTypedFigure, readTypedFigures } from "../../src/intake/typedFigure.ts";
import { propertyRuns } from "../propertyRuns.ts";

const THOU = lengthUnit("thou");
const MICROMETRES = lengthUnit("µm");

describe("a figure as a machinist writes it", () => {
  test.each([
    [".012", 0.012],
    ["0.012", 0.012],
    ["12 thou", 0.012],
    ["12thou", 0.012],
    ["12", 12],
    ["5 tenths", 0.0005],
    ["12.5 tenths", 0.00125],
    ['3-1/2"', 3.5],
    ["3 1/2", 3.5],
    ["3-1/2 in", 3.5],
    ["3½", 3.5],
    ["3-½", 3.5],
    ["-½", -0.5],
    ["7/64", 0.109375],
    ["- .003", -0.003],
    ["−.003", -0.003],
    ["0,31", 0.31],
    ["0.3048 mm", 0.012],
  ])("%s is %d in inches", (text, value) => {
    expect(readTypedFigure(text, "in")).toEqual({ ok: true, value });
  });

  test.each([
    ["0,31", 0.31],
    ["12", 12],
    ["12 thou", 0.3048],
    ['3-1/2"', 88.9],
    ["3 1/2", 3.5],
    ["210 µm", 0.21],
    ["+000.21", 0.21],
  ])("%s is %d in millimetres", (text, value) => {
    expect(readTypedFigure(text, "mm")).toEqual({ ok: true, value });
  });

  test("a bare number is in the unit shown; one with a unit is not", () => {
    expect(readTypedFigure("12", "in", THOU)).toEqual({ ok: true, value: 0.012 });
    expect(readTypedFigure(".012 in", "in", THOU)).toEqual({ ok: true, value: 0.012 });
    expect(readTypedFigure("210", "mm", MICROMETRES)).toEqual({ ok: true, value: 0.21 });
    expect(readTypedFigure("10", "mm", THOU)).toEqual({ ok: true, value: 0.254 });
  });

  test("a tenth is refused where millimetres are shown, whatever the slide is kept in", () => {
    for (const refused of [
      readTypedFigure("5 tenths", "mm"),
      readTypedFigure("5 tenths", "in", MICROMETRES),
      readTypedFigure("5 tenth", "mm"),
    ]) {
      expect(refused).toMatchObject({
        ok: false,
        problem: { what: expect.stringContaining("a tenth of a thousandth of an inch") },
      });
    }
    expect(readTypedFigure("5 tenths", "mm", THOU)).toEqual({ ok: true, value: 0.0127 });
  });

  test.each([
    ["", "is empty"],
    ["-", "is empty"],
    ["0.2x", '"x" is not a known unit'],
    ["0.021.020", "not a number"],
    ["1,234", "may mean thousands or thousandths"],
    ["5 div", "which is no length"],
    ["20000", "is too large"],
    ["1/3", "not a number"],
  ])("%j is refused", (text, why) => {
    expect(readTypedFigure(text, "mm")).toMatchObject({
      ok: false,
      problem: { what: expect.stringContaining(why) },
    });
  });

  test.each([
    ["nought", "mm", "Type it in digits, such as 0.25 or 12 thou."],
    ["0.2x", "in", "Write it in mm, µm, in or thou."],
    ["a few", "plain", "Type the figure alone, in digits."],
    ["1200 h", "plain", "Type the figure alone, in digits."],
    ["12 thou", "divisions", "Type the figure alone, in digits."],
    ["1,234", "plain", "Write it without a mark between thousands, and with a decimal point."],
  ] as const)("the cure for %j is one for a field of %s", (text, counts, cure) => {
    expect(readTypedFigure(text, counts)).toMatchObject({ ok: false, problem: { cure } });
  });

  test("divisions of a dial may be halved, and take no unit of length", () => {
    expect(readTypedFigure("97 1/2", "divisions")).toEqual({ ok: true, value: 97.5 });
    expect(readTypedFigure("3½ div", "divisions")).toEqual({ ok: true, value: 3.5 });
    expect(readTypedFigure("3 mm", "divisions").ok).toBe(false);
    expect(readTypedFigure("3 mm", "plain").ok).toBe(false);
  });
});

describe("any figure", () => {
  const tenThousandths = fc.integer({ min: -99_999_999, max: 99_999_999 });

  test("written with a point or a comma is read as it stands", () => {
    fc.assert(
      fc.property(
        tenThousandths,
        fc.constantFrom(".", ","),
        fc.constantFrom("", " ", "  "),
        (count, mark, pad) => {
          const written = (count / 10_000).toFixed(4);
          const read = readTypedFigure(`${pad}${written.replace(".", mark)}${pad}`, "mm");
          expect(read).toEqual({ ok: true, value: Number(written) });
        },
      ),
    );
  });

  test("in thousandths or tenths is that part of an inch", () => {
    fc.assert(
      fc.property(fc.integer({ min: -99_999, max: 99_999 }), (count) => {
        expect(readTypedFigure(`${count} thou`, "in")).toEqual({ ok: true, value: count / 1000 });
        expect(readTypedFigure(`${count} tenths`, "in")).toEqual({ ok: true, value: count / 10_000 });
        expect(readTypedFigure(`${count}`, "in", THOU)).toEqual({ ok: true, value: count / 1000 });
      }),
    );
  });

  test("in whole inches and a binary fraction is their sum", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 300 }),
        fc.constantFrom(2, 4, 8, 16, 32, 64),
        fc.nat(),
        fc.constantFrom(" ", "-", " −".trim()),
        fc.constantFrom("", '"', " in"),
        (whole, denominator, any, between, unit) => {
          const numerator = 1 + (any % (denominator - 1));
          const read = readTypedFigure(`${whole}${between}${numerator}/${denominator}${unit}`, "in");
          expect(read).toEqual({ ok: true, value: whole + numerator / denominator });
        },
      ),
    );
  });

  test("is a finite number or a refusal with a cure, whatever is typed", () => {
    const counts = fc.constantFrom("mm" as const, "in" as const, "divisions" as const, "plain" as const);
    const typed = fc.oneof(
      fc.string({ unit: "binary" }),
      fc.string({ unit: fc.constantFrom(..."0123456789.,-+/ '\"½emintho") }),
    );
    fc.assert(
      fc.property(typed, counts, (text, counted) => {
        const read = readTypedFigure(text, counted);
        if (read.ok) expect(Number.isFinite(read.value)).toBe(true);
        else expect(read.problem.what).not.toBe("");
      }),
      { numRuns: propertyRuns(400) },
    );
  });

  test("beside others is the same figure as alone", () => {
    const figure = fc.oneof(
      fc.integer({ min: 0, max: 9999 }).map((count) => (count / 1000).toFixed(3)),
      fc.integer({ min: 1, max: 99 }).map((count) => `${count} thou`),
      fc.integer({ min: 1, max: 31 }).map((count) => `2-${count}/32`),
    );
    fc.assert(
      fc.property(
        fc.array(figure, { minLength: 1 }),
        fc.constantFrom("  ", "; ", "\n"),
        (figures, between) => {
          const alone = figures.map((text) => readTypedFigure(text, "in"));
          const read = readTypedFigures(figures.join(between), "in");
          expect(read).toEqual({ ok: true, value: alone.map((each) => (each.ok ? each.value : Number.NaN)) });
        },
      ),
    );
  });
});

test("of several figures, the one that cannot be read is told", () => {
  expect(readTypedFigures("0.01 0.0x2 0.01", "mm")).toMatchObject({
    ok: false,
    problem: { what: expect.stringContaining("0.0x2") },
  });
  expect(readTypedFigures("1/2  3 1/4", "in")).toEqual({ ok: true, value: [0.5, 3.25] });
  expect(readTypedFigures(" ; ", "mm").ok).toBe(false);
});
