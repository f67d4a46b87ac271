import { describe, expect, test } from "vitest";
import { inspectionText, openInspection, openSlide, readInspection } from "../../src/inspection/open.ts";
import { withValueAt } from "../../src/inspection/plainData.ts";
import { inOneLine, type Outcome } from "../../src/inspection/problem.ts";
import { IN_INCHES } from "./example.ts";

const TEXT = JSON.stringify(IN_INCHES, null, 2);

function refusal(outcome: Outcome<unknown>): string {
  return outcome.ok ? "opened" : inOneLine(outcome.problem);
}

describe("an inspection file", () => {
  test("opens as it was saved", () => {
    expect(openInspection(inspectionText(IN_INCHES))).toEqual({ ok: true, value: IN_INCHES });
  });

  test("opens with a byte-order mark before it", () => {
    expect(openInspection(`\uFEFF${TEXT}`).ok).toBe(true);
  });

  test("keeps keys that are not known, at every level, when it is saved again", () => {
    const withExtras = {
      ...IN_INCHES,
      later: { a: 1 },
      slide: { ...IN_INCHES.slide, later: [1], screw: { ...IN_INCHES.slide.screw, later: "x" } },
      surveys: IN_INCHES.surveys.map((survey) => ({
        ...survey,
        later: null,
        conditions: { oil: "fresh" },
        readings: survey.readings.map((item) => ({ ...item, later: true })),
      })),
    };
    const opened = openInspection(JSON.stringify(withExtras));
    if (!opened.ok) throw new Error(inOneLine(opened.problem));
    expect(JSON.parse(inspectionText(opened.value))).toEqual(withExtras);
  });
});

describe("a file that cannot be opened is refused with the place and the reason", () => {
  test("an empty one", () => {
    expect(refusal(openInspection(" \n"))).toBe(
      "the file is empty. Choose a file that was saved with an inspection in it.",
    );
  });

  test("one that breaks off", () => {
    const text = TEXT.slice(0, TEXT.indexOf('"surveys"'));
    const lines = text.split("\n");
    expect(refusal(openInspection(text))).toContain(
      `line ${lines.length}, column ${(lines.at(-1) ?? "").length + 1}: the JSON breaks off or is damaged`,
    );
  });

  test("one that is damaged in the middle", () => {
    expect(refusal(openInspection('{\n  "format": "tightspot-inspection",\n  "version": tru\n}'))).toMatch(
      /^line 3, column 14: /,
    );
  });

  test("one that is something else", () => {
    for (const text of ["[]", "3", "null", '{"format": "other"}', '{"version": 1}']) {
      expect(refusal(openInspection(text))).toMatch(/^format: this is not an inspection file/);
    }
  });

  test("one of a newer version, which is left as it was", () => {
    expect(refusal(readInspection({ ...IN_INCHES, version: 2 }))).toBe(
      "version: the file is of version 2, newer than this program reads (1). Open it with a newer Tightspot. The file was left as it was.",
    );
  });

  test("one without a version that makes sense", () => {
    for (const version of [undefined, "1", 0, 1.5]) {
      expect(refusal(readInspection({ ...IN_INCHES, version }))).toMatch(/^version: .* missing or damaged/);
    }
  });
});

describe("values that the schema does not allow are refused by their place", () => {
  const [first, second] = IN_INCHES.surveys;
  const withFirst = (changed: object): object => ({ ...IN_INCHES, surveys: [{ ...first, ...changed }] });
  const withSlide = (name: string, value: unknown): object => withValueAt(IN_INCHES, `slide.${name}`, value);

  test.each([
    ["no travel", withSlide("travel", undefined), "slide.travel: is missing; it must be an object"],
    [
      "a travel that runs backwards",
      withSlide("travel", { from: 5, to: 5 }),
      'slide.travel: "from" must be less than "to"',
    ],
    ["half a travel", withSlide("travel", { from: 5 }), "slide.travel.to: is missing; it must be a number"],
    [
      "a working range beyond the travel",
      withSlide("workingRange.to", 21),
      "slide.workingRange: must lie within the travel",
    ],
    ["a lead of nothing", withSlide("screw.lead", 0), "slide.screw.lead: must be greater than zero"],
    ["a lead in words", withSlide("screw.lead", "0.2"), 'slide.screw.lead: is "0.2"; it must be a number'],
    ["half a start", withSlide("screw.starts", 1.5), "slide.screw.starts: is 1.5; it must be a whole number"],
    ["an unknown unit", withSlide("units", "cm"), 'slide.units: is "cm"; it must be "mm" or "in"'],
    ["no name", withSlide("name", ""), "slide.name: must not be empty"],
    [
      "a yes that is no boolean",
      withSlide("holdsLoad", "yes"),
      'slide.holdsLoad: is "yes"; it must be true or false',
    ],
    [
      "a negative clearance",
      withSlide("runningClearance", -1),
      "slide.runningClearance: must not be negative",
    ],
    [
      "no limit",
      withSlide("backlashLimit", undefined),
      "slide.backlashLimit: is missing; it must be a number",
    ],
    [
      "two surveys of one id",
      { ...IN_INCHES, surveys: [first, { ...second, id: "first" }] },
      'surveys[1].id: "first" is used twice',
    ],
    [
      "a survey with the slide's id",
      { ...IN_INCHES, surveys: [{ ...first, id: "table" }] },
      'surveys[0].id: "table" is used twice',
    ],
    ["no surveys", { ...IN_INCHES, surveys: undefined }, "surveys: is missing; it must be an array"],
    ["a day that there is not", withFirst({ taken: "2026-02-30" }), "surveys[0].taken: must be a date"],
    ["a date in words", withFirst({ taken: "14 March" }), "surveys[0].taken: must be a date"],
    [
      "an indicator square to the travel",
      withFirst({ indicator: { angleToTravel: 90 } }),
      "surveys[0].indicator.angleToTravel: must be less than 90°",
    ],
    [
      "a reading of no known shape",
      withFirst({ readings: [{ position: 1 }] }),
      "surveys[0].readings[0]: needs position and backlash",
    ],
    [
      "a reading that is no number",
      withFirst({ readings: [{ position: 1, backlash: null }] }),
      "surveys[0].readings[0].backlash: is null; it must be a number",
    ],
    [
      "a reading with a decimal comma",
      withFirst({
        readings: [
          { position: 1, backlash: 0.2 },
          { position: 2, backlash: "0,21" },
        ],
      }),
      'surveys[0].readings[1].backlash: is "0,21"; it must be a number.',
    ],
    [
      "a reading of which nothing is a number, each counted",
      withFirst({ readings: [{ position: "1", backlash: "0,21" }] }),
      'surveys[0].readings[0].position: is "1"; it must be a number (and 1 more problem)',
    ],
    [
      "half a pair, of which the other half is no number",
      withFirst({ readings: [{ position: 1, advancing: "3" }] }),
      "surveys[0].readings[0]: needs position and backlash",
    ],
    [
      "a pair by push-pull",
      withFirst({ readings: [{ position: 1, advancing: 1, retracting: 0 }] }),
      'surveys[0].readings[0]: does not fit the method "push-pull"',
    ],
    [
      "divisions without a dial",
      withFirst({ method: "dial-pair", readings: [{ position: 1, advancing: 1, retracting: 0 }] }),
      "surveys[0].dial: is missing",
    ],
    [
      "a survey that is nothing",
      { ...IN_INCHES, surveys: [null] },
      "surveys[0]: is null; it must be an object",
    ],
  ])("%s", (_, data, refused) => {
    expect(refusal(readInspection(data))).toContain(refused);
  });

  test.each(["1e999", "-1e999"])("%s, which is beyond every number", (number) => {
    const text = TEXT.replace(/"lead": [\d.]+/, `"lead": ${number}`);
    expect(refusal(openInspection(text))).toContain("slide.screw.lead: is too large a number");
  });

  test("all of them counted", () => {
    const data = { ...IN_INCHES, slide: { ...IN_INCHES.slide, name: 3, units: 4, travel: 5 } };
    expect(refusal(readInspection(data))).toBe(
      "slide.name: is 3; it must be a string (and 2 more problems). Correct it in the file and open it again.",
    );
  });
});

test("a reading is known by the values it needs, whatever other keys it has", () => {
  const readings = [
    { position: 1, backlash: 0.1, advancing: 3 },
    { position: 1, backlash: 0.1, target: "the far stop" },
  ];
  expect(readInspection({ ...IN_INCHES, surveys: [{ ...IN_INCHES.surveys[0], readings }] }).ok).toBe(true);
});

describe("the slide alone", () => {
  test("is opened from a file without surveys, with parts missing", () => {
    const { units, travel } = IN_INCHES.slide;
    const text = JSON.stringify({ format: "tightspot-inspection", version: 1, slide: { units, travel } });
    expect(openSlide(text)).toEqual({ ok: true, value: { units, travel } });
  });

  test("needs its unit", () => {
    const text = JSON.stringify({ format: "tightspot-inspection", version: 1, slide: {} });
    expect(refusal(openSlide(text))).toContain('slide.units: is missing; it must be "mm" or "in"');
  });

  test("is refused like an inspection where the file is none", () => {
    expect(refusal(openSlide("{}"))).toMatch(/^format: /);
    expect(refusal(openSlide("{"))).toMatch(/^line 1, column 2: /);
  });
});
