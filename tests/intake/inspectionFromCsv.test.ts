import { describe, expect, test } from "vitest";
import type { Outcome } from "../../src/inspection/problem.ts";
import { inspectionFromCsv } from "../../src/intake/inspectionFromCsv.ts";
import { PARTLY, WHOLE } from "../../src/intake/missing.ts";
import { type CsvReadings, readCsv } from "../../src/intake/readCsv.ts";
import type { Statement } from "../../src/intake/statements.ts";
import type { CsvOptions } from "../../src/intake/understanding.ts";

const LABELS = { id: "log", name: "A slide", taken: "2026-01-02" };

const WHOLE_LOG = `slide.travel.from: 0
slide.travel.to: 500
slide.screw.lead: 5
slide.backlashLimit: 0.20
survey.indicator.resolution: 0.01
position (mm),backlash
0,0.21
254,0.254
`;

function valueIn<T>(outcome: Outcome<T>): T {
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problem));
  return outcome.value;
}

function csv(log: string, options?: CsvOptions): CsvReadings {
  return valueIn(readCsv(log, options));
}

describe("an inspection from a log", () => {
  test("whose own lines say all that is needed", () => {
    expect(valueIn(inspectionFromCsv(csv(WHOLE_LOG), LABELS, WHOLE))).toEqual({
      assumed: [],
      inspection: {
        format: "tightspot-inspection",
        version: 1,
        slide: {
          id: "log-slide",
          name: "A slide",
          units: "mm",
          travel: { from: 0, to: 500 },
          screw: { lead: 5 },
          backlashLimit: 0.2,
        },
        surveys: [
          {
            id: "log",
            taken: "2026-01-02",
            stage: "routine",
            method: "push-pull",
            indicator: { resolution: 0.01 },
            readings: [
              { position: 0, backlash: 0.21 },
              { position: 254, backlash: 0.254 },
            ],
          },
        ],
      },
    });
  });

  test("names all that is missing at once, and how to give it", () => {
    const outcome = inspectionFromCsv(csv("slide.screw.lead: 5\nposition,backlash\n0,0.2\n"), LABELS, WHOLE);
    expect(outcome).toEqual({
      ok: false,
      problem: {
        where: "slide.units",
        what: "the unit, the start of the travel, the end of the travel and the limit on lost motion are missing",
        cure: 'Add above the headings lines such as "slide.units: mm", "slide.travel.from: 0", "slide.travel.to: 600" and "slide.backlashLimit: 0.15".',
      },
    });
  });

  test("says what is missing in the caller's words", () => {
    const log = WHOLE_LOG.replace(/slide.screw.lead.*\n/, "");
    const outcome = inspectionFromCsv(csv(log), LABELS, WHOLE, [], (keys) => `Fill in ${keys.join()}.`);
    expect(outcome).toEqual({
      ok: false,
      problem: { where: "slide.screw.lead", what: "the lead is missing", cure: "Fill in slide.screw.lead." },
    });
  });

  test("needs the travel of a division only where readings are in divisions", () => {
    const pairs = WHOLE_LOG.replace("backlash\n0,0.21\n254,0.254", "advancing,retracting\n0,98,3");
    const inDivisions = inspectionFromCsv(csv(pairs, { method: "dial-pair" }), LABELS, WHOLE);
    expect(inDivisions).toMatchObject({
      ok: false,
      problem: { what: "the travel for one division of the dial is missing" },
    });
    expect(inspectionFromCsv(csv(WHOLE_LOG, { method: "dial-pair" }), LABELS, WHOLE).ok).toBe(true);
  });

  test("is refused with the place where the schema does not allow a value", () => {
    const log = WHOLE_LOG.replace("slide.travel.to: 500", "slide.travel.to: -500");
    expect(inspectionFromCsv(csv(log), LABELS, WHOLE)).toMatchObject({
      ok: false,
      problem: { where: "slide.travel", what: '"from" must be less than "to"' },
    });
  });

  test("takes the date from the log's line, else from its first reading, else from the caller", () => {
    const dated = WHOLE_LOG.replace("backlash\n0,0.21\n254,0.254", "backlash,time\n0,0.21,2026-03-14 09:30");
    const taken = (log: string): unknown =>
      valueIn(inspectionFromCsv(csv(log), LABELS, WHOLE)).inspection.surveys[0]?.taken;
    expect(taken(`survey.taken: 2026-02-01\n${dated}`)).toBe("2026-02-01");
    expect(taken(dated)).toBe("2026-03-14");
    expect(taken(dated.replace("2026-03-14", "yesterday"))).toBe("2026-01-02");
  });
});

describe("what others say of the slide", () => {
  const slideFile: Statement = {
    by: "the slide file",
    units: "mm",
    slide: {
      id: "s",
      name: "Table",
      units: "mm",
      travel: { from: 0, to: 500 },
      screw: { lead: 4 },
      backlashLimit: 0.2,
    },
  };
  const command: Statement = {
    by: "the command",
    units: "in",
    slide: { backlashLimit: 0.005, nut: { adjustable: false, engagedLength: 2 } },
    survey: { endFloat: [0.001] },
  };

  test("stands before the log's lines, and the command before the slide file, each in its own unit", () => {
    const log = WHOLE_LOG.replace(/slide.travel.*\n/g, "").replace(
      "survey",
      "survey.endFloat: 0.05\nslide.nut.adjustable: yes\nsurvey",
    );
    const { inspection, assumed } = valueIn(inspectionFromCsv(csv(log), LABELS, WHOLE, [slideFile, command]));
    expect(inspection.slide).toEqual({
      id: "s",
      name: "Table",
      units: "mm",
      travel: { from: 0, to: 500 },
      screw: { lead: 4 },
      nut: { adjustable: false, engagedLength: 50.8 },
      backlashLimit: 0.127,
    });
    expect(inspection.surveys[0]?.endFloat).toEqual([0.0254]);
    expect(assumed).toEqual([
      "The lead is 4 mm, as the slide file says (the log says 5 mm).",
      "Nut adjustable: no, as the command says (the log says yes).",
      "The limit is 0.127 mm, as the command says (the log says 0.2 mm, the slide file says 0.2 mm).",
      "The end float is 0.0254 mm, as the command says (the log says 0.05 mm).",
    ]);
  });

  test("brings the log's readings to the unit of the slide file", () => {
    const inches: Statement = { ...slideFile, units: "in", slide: { ...slideFile.slide, units: "in" } };
    const { inspection } = valueIn(
      inspectionFromCsv(csv("position (mm),backlash\n0,0.254\n254,0.508\n"), LABELS, WHOLE, [inches]),
    );
    expect(inspection.slide.travel).toEqual({ from: 0, to: 500 });
    expect(inspection.surveys[0]?.readings).toEqual([
      { position: 0, backlash: 0.01 },
      { position: 10, backlash: 0.02 },
    ]);
  });

  test("gives its unit to a log without any, and says so", () => {
    const { inspection, assumed } = valueIn(
      inspectionFromCsv(csv("position,backlash\n10,0.2\n"), LABELS, WHOLE, [slideFile]),
    );
    expect(inspection.surveys[0]?.readings).toEqual([{ position: 10, backlash: 0.2 }]);
    expect(assumed).toEqual(["The log gives no unit; its lengths are taken to be in mm."]);
  });
});

describe("an inspection that is to be completed later", () => {
  test("holds what is known and may want the rest", () => {
    const log = csv("slide.screw.starts: 2\nposition (in),backlash (thou)\n0,8\n");
    expect(valueIn(inspectionFromCsv(log, LABELS, PARTLY)).inspection).toEqual({
      format: "tightspot-inspection",
      version: 1,
      slide: { id: "log-slide", name: "A slide", units: "in", screw: { starts: 2 } },
      surveys: [
        {
          id: "log",
          taken: "2026-01-02",
          stage: "routine",
          method: "push-pull",
          readings: [{ position: 0, backlash: 0.008 }],
        },
      ],
    });
  });

  test("needs no limit, no lead, no travel and nothing of a dial, but its unit", () => {
    const log = csv("survey.method: dial-pair\nposition,advancing,retracting\n0,98,3\n");
    expect(inspectionFromCsv(log, LABELS, PARTLY)).toMatchObject({
      ok: false,
      problem: { where: "slide.units", what: "the unit is missing" },
    });
    const told = csv("slide.units: mm\nsurvey.method: dial-pair\nposition,advancing,retracting\n0,98,3\n");
    expect(inspectionFromCsv(told, LABELS, PARTLY).ok).toBe(true);
  });

  test("is refused where a line says what the schema does not allow", () => {
    const log = csv("survey.stage: sometime\nposition (mm),backlash\n1,0.2\n");
    expect(inspectionFromCsv(log, LABELS, PARTLY)).toMatchObject({
      ok: false,
      problem: { where: "surveys[0].stage" },
    });
  });
});
