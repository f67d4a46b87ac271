import { describe, expect, test } from "vitest";
import type { Problem } from "../../src/inspection/problem.ts";
import { type CsvReadings, readCsv } from "../../src/intake/readCsv.ts";
import type { CsvOptions } from "../../src/intake/understanding.ts";

function read(source: string | Uint8Array, options?: CsvOptions): CsvReadings {
  const outcome = readCsv(source, options);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problem));
  return outcome.value;
}

function problemWith(source: string | Uint8Array, options?: CsvOptions): Problem {
  const outcome = readCsv(source, options);
  if (outcome.ok) throw new Error("it was read");
  return outcome.problem;
}

describe("what cannot be read is refused with place, reason and cure", () => {
  test("an empty text", () => {
    expect(problemWith(" \n\t\n")).toEqual({
      where: "",
      what: "there is nothing in it",
      cure: "Choose a file, or paste a table, with readings.",
    });
  });

  test("a file that is no text", () => {
    const picture = Uint8Array.from({ length: 256 }, (_, index) => index);
    expect(problemWith(picture).what).toBe("this is not a text but another kind of file");
    expect(problemWith("\u0001\u0002position,backlash\n").what).toBe(
      "this is not a text but another kind of file",
    );
  });

  test("columns of which none is the backlash, named as they were found", () => {
    expect(problemWith("Our lathe, 2026\nposition,temperature,who\n0,20,x\n")).toEqual({
      where: "line 2",
      what: 'no row of headings names what is needed; the columns found are "position", "temperature", "who"',
      cure: "Head the columns with position and backlash, or with position, advancing and retracting (notes and times may have columns too).",
    });
  });

  test("numbers without headings", () => {
    expect(problemWith("0,0.21\n10,0.22\n").what).toBe("there is no row of headings");
  });

  test("two columns that could each be the position", () => {
    expect(problemWith("x,y,backlash\n0,1,0.2\n").what).toBe(
      'the columns "x" and "y" could each be the position',
    );
  });

  test("two different columns that could each be the backlash", () => {
    expect(problemWith("position,play,lost motion\n0,1,0.2\n").what).toContain('"play" and "lost motion"');
  });

  test("halves of pairs in rows of their own", () => {
    const log = "position,direction,reading\n0,advancing,5.00\n0,retracting,4.79\n";
    expect(problemWith(log).what).toContain("each reading is half of a pair");
    expect(read("position,direction,backlash\n0,up,0.2\n").readings).toHaveLength(1);
  });

  test("pairs that do not pair up", () => {
    const log = "position,advancing 1,advancing 2,retracting 1\n0,1,1,0.8\n";
    expect(problemWith(log).what).toBe("the columns of advancing and retracting do not pair up");
  });

  test.each([
    ["degrees", "position,backlash (deg)\n0,2\n", 'the unit in "backlash (deg)" cannot be read'],
    [
      "a unit that may be a resolution",
      "position,backlash (0.01 mm)\n0,21\n",
      'the unit in "backlash (0.01 mm)" cannot be read',
    ],
    [
      "a position in divisions",
      "position (div),backlash\n0,21\n",
      'the unit in "position (div)" cannot be read',
    ],
    [
      "lost motion in divisions",
      "position,backlash (div)\n0,5\n",
      "the lost motion is in divisions of a dial",
    ],
  ])("%s", (_, log, what) => {
    expect(problemWith(log).what).toBe(what);
    expect(problemWith(log).where).toBe("line 1");
  });

  test("commas that separate the columns and are the decimal mark as well", () => {
    const what = "commas seem to separate the columns and to be the decimal mark as well";
    expect(problemWith("position,backlash\n0,0,21\n10,0,22\n").what).toBe(what);
    expect(problemWith("position,backlash,note\n0,0,21\n10,0,22\n").what).toBe(what);
  });

  test("headings with no row below", () => {
    expect(problemWith("position,backlash\n")).toMatchObject({
      where: "line 1",
      what: "there are no rows below the headings",
    });
  });

  test("rows of which none can be read", () => {
    expect(problemWith("position,backlash\n0,\n10,x\n")).toEqual({
      where: "line 2",
      what: "no row can be read: it has a position but no reading (and 1 more rows or cells)",
      cure: "Write the reading, or take the row out.",
    });
  });

  test("pairs where the method is push-pull", () => {
    const log = "position,advancing,retracting\n0,1,0.8\n";
    expect(problemWith(log, { method: "push-pull" }).what).toBe(
      "advancing and retracting do not fit the method push-pull",
    );
  });

  test("a dial pair in a unit of length", () => {
    const log = "position,advancing (mm),retracting (mm)\n0,1,0.8\n";
    expect(problemWith(log, { method: "dial-pair" }).what).toContain("the headings give a unit of length");
  });

  test("a method that there is not", () => {
    expect(problemWith("survey.method: guess\nposition,backlash\n0,0.2\n")).toMatchObject({
      where: "line 1",
      what: 'survey.method is "guess"',
    });
  });
});

describe("the method", () => {
  const both = "position,advancing,retracting,backlash\n0,1,0.8,0.2\n";

  test("is an indicator pair where readings and their difference both have columns", () => {
    const csv = read(both);
    expect(csv.method).toBe("indicator-pair");
    expect(csv.readings).toEqual([{ position: 0, advancing: 1, retracting: 0.8 }]);
  });

  test("chooses between the columns where it is given", () => {
    expect(read(both, { method: "push-pull" }).readings).toEqual([{ position: 0, backlash: 0.2 }]);
  });

  test("may be a pair whose backlash was worked out", () => {
    expect(read("survey.method: dial-pair\nposition,backlash\n0,0.2\n")).toMatchObject({
      method: "dial-pair",
      readings: [{ position: 0, backlash: 0.2 }],
    });
  });

  test("given by the caller stands before that of the log", () => {
    const log = "survey.method: indicator-pair\nposition,advancing,retracting\n0,98,3\n";
    expect(read(log, { method: "dial-pair" }).method).toBe("dial-pair");
  });
});

describe("units", () => {
  test("all lengths come out in the unit that a line gives", () => {
    const log =
      "slide.units: in\nslide.screw.lead: 0.2\nslide.backlashLimit: 0.254 mm\nposition (mm),backlash\n254,0.008\n";
    expect(read(log)).toMatchObject({
      units: "in",
      readings: [{ position: 10, backlash: 0.008 }],
      slideData: { slide: { units: "in", screw: { lead: 0.2 }, backlashLimit: 0.01 } },
    });
  });

  test("come out as asked for, from whatever the headings say", () => {
    expect(read("position (mm),backlash (µm)\n254,508\n", { units: "in" })).toMatchObject({
      units: "in",
      readings: [{ position: 10, backlash: 0.02 }],
    });
  });

  test.each([
    ["mm", 1],
    ["millimetres", 1],
    ["cm", 10],
    ["m", 1000],
    ["µm", 0.001],
    ["μm", 0.001],
    ["um", 0.001],
    ["micron", 0.001],
    ["1/100 mm", 0.01],
    ["mm/100", 0.01],
    ["in", 25.4],
    ["inches", 25.4],
    ['"', 25.4],
    ["in.", 25.4],
    ["ft", 304.8],
    ["thou", 0.0254],
    ["mil", 0.0254],
    ['1/1000"', 0.0254],
  ])("a heading in %s", (unit, millimetres) => {
    const [reading] = read(`slide.units: mm\nposition (mm);backlash (${unit})\n0;1\n`).readings;
    expect(reading?.backlash).toBe(millimetres);
  });
});

describe("lines that say something of the slide", () => {
  const log = `Surface grinder, table
"slide.name: Table, long way",,
slide.machine,Surface grinder,
SLIDE.TRAVEL.FROM: 0
slide.travel.to: 450
slide.screw.lead: 4 mm,,
slide.screw.starts: 1
slide.nut.adjustable: no
slide.backlashLimit: 0,15
slide.maker: unknown here
survey.endFloat: 0,02 0,03 mm
survey.taken: 2026-03-14
position (mm),backlash,note
0,0.21,
`;

  test("are found by their dotted names, however the spreadsheet padded them", () => {
    expect(read(log).slideData).toEqual({
      slide: {
        name: "Table, long way",
        machine: "Surface grinder",
        travel: { from: 0, to: 450 },
        screw: { lead: 4, starts: 1 },
        nut: { adjustable: false },
        backlashLimit: 0.15,
        maker: "unknown here",
      },
      survey: { endFloat: [0.02, 0.03], taken: "2026-03-14" },
      inspection: {},
    });
  });

  test.each([
    ["0.02 0.03", [0.02, 0.03]],
    ["0.02,0.03", [0.02, 0.03]],
    ["0.02; 0.03", [0.02, 0.03]],
    ["0,02, 0,03", [0.02, 0.03]],
    ["0.02 mm, 1 thou", [0.02, 0.0254]],
    [".02", [0.02]],
  ])("measured end floats %s", (text, endFloat) => {
    const csv = read(`survey.endFloat: ${text}\nposition (mm);backlash (mm)\n0;0.2\n`);
    expect(csv.slideData.survey).toEqual({ endFloat });
  });

  test.each([
    ['slide.travel.to: 24"', { travel: { to: 24 } }],
    ['"slide.travel.to: 24""",,', { travel: { to: 24 } }],
    ['slide.screw.lead,"1/4""",', { screw: { lead: 0.25 } }],
    ['"slide.name","Table, long"', { name: "Table, long" }],
    ["slide.screw.lead = 6.35mm", { screw: { lead: 0.25 } }],
  ])("keep their inch marks and lose their quotes: %s", (line, slide) => {
    expect(read(`${line}\nposition (in),backlash (in)\n0,0.2\n`).slideData.slide).toEqual(slide);
  });

  test("are refused by name where their value cannot be read, and the readings stand", () => {
    const csv = read(
      "slide.screw.lead: four\nslide.nut.adjustable: perhaps\nslide.units: furlong\nposition,backlash\n0,0.2\n",
    );
    expect(csv.refused).toEqual([
      {
        row: 1,
        text: "slide.screw.lead: four",
        reason: 'slide.screw.lead is "four", which is not a number',
        cure: "Correct the cell, or leave it empty.",
      },
      {
        row: 2,
        text: "slide.nut.adjustable: perhaps",
        reason: 'slide.nut.adjustable is "perhaps"',
        cure: "Write yes or no.",
      },
      {
        row: 3,
        text: "slide.units: furlong",
        reason: 'slide.units is "furlong", which is not a unit of a slide',
        cure: "Write mm or in.",
      },
    ]);
    expect(csv.readings).toHaveLength(1);
  });

  test("are refused below the headings", () => {
    const csv = read("position,backlash\n0,0.2\nslide.screw.lead: 4\n");
    expect(csv.refused).toMatchObject([{ row: 3, cure: "Move it above the headings." }]);
  });
});

describe("what the columns were taken as", () => {
  test("is told for each, with its unit and why", () => {
    const log =
      "no,Position (in),backlash 1,backlash 2 [thou],mean,remarks,date,struck\n1,2,0.008,9,8.5,gib,2026-03-14,slipped\n";
    const csv = read(log);
    expect(csv.columns.map(({ header, takenAs, unit }) => [header, takenAs, unit])).toEqual([
      ["no", "not used", undefined],
      ["Position (in)", "position", "in"],
      ["backlash 1", "backlash 1", "in"],
      ["backlash 2 [thou]", "backlash 2", "thou"],
      ["mean", "not used", undefined],
      ["remarks", "note", undefined],
      ["date", "date", undefined],
      ["struck", "excluded", undefined],
    ]);
    expect(csv.columns[0]?.why).toBe("its heading is none that is known");
    expect(csv.columns[1]?.why).toBe("its heading says so; its heading gives the unit");
    expect(csv.columns[2]?.why).toBe("its heading says so; the unit is that of the rest of the log");
    expect(csv.readings).toEqual([
      { position: 2, backlash: 0.008, note: "gib", time: "2026-03-14", excluded: "slipped" },
      { position: 2, backlash: 0.009, note: "gib", time: "2026-03-14", excluded: "slipped" },
    ]);
  });

  test("prefers the plainer of two headings", () => {
    const csv = read("trial,station,position,reading,backlash\n1,7,50,9,0.2\n");
    expect(csv.readings).toEqual([{ position: 50, backlash: 0.2 }]);
    expect(csv.columns[3]).toMatchObject({ takenAs: "not used", why: "another column says it more plainly" });
  });

  test.each([
    "Position;Backlash",
    "POS.;LASH",
    "x-position [mm];Lost-motion",
    "Carriage position / mm;Total play".replace("Total ", ""),
    "coordinate_mm;slop_mm",
    "Travel, mm;Free play, mm",
    "position from chuck;backlash measured",
    "Pos (from left, mm);Reading #1",
    "Position (mm from the left);Backlash (mm)",
  ])("knows %s", (headings) => {
    expect(read(`${headings}\n5;0.2\n`).readings).toEqual([{ position: 5, backlash: 0.2 }]);
  });

  test.each([
    "adv;ret",
    "Advancing reading;Retracting reading",
    "reading (advancing);reading (retracting)",
    "fwd.;rev.",
    "going up;coming down".replace("coming", "going"),
    "approach from left;approach from right",
    "dial +;dial -",
    "clockwise;anti-clockwise",
    "Forward 1;Backward 1",
    "advance in mm;retract in mm",
  ])("knows the pair %s", (headings) => {
    const [reading] = read(`position;${headings}\n5;1;0.8\n`).readings;
    expect(reading).toEqual({ position: 5, advancing: 1, retracting: 0.8 });
  });
});

test("a long log is read in a moment, even where every line has a stray quote", () => {
  const lines = Array.from({ length: 20_000 }, (_, index) => `${index},0.2,"stray`);
  const csv = read(`position,backlash,note\n${lines.join("\n")}`);
  expect(csv.readings).toHaveLength(20_000);
  expect(csv.readings[19_999]).toEqual({ position: 19_999, backlash: 0.2, note: '"stray' });
});
