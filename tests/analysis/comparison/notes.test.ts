import { describe, expect, it } from "vitest";
import type { AssessedSurvey } from "../../../src/analysis/assess.ts";
import { notesOf } from "../../../src/analysis/comparison/notes.ts";
import type { Survey } from "../../../src/inspection/schema.ts";
import { drawn } from "./drawn.ts";

const read = (survey: Partial<Survey>, part: Partial<AssessedSurvey> = {}): AssessedSurvey =>
  drawn([0, 300], [[0.1, 0.1]], survey, part);

const BEFORE = { id: "before", taken: "2026-03-02" };
const AFTER = { id: "after", taken: "2026-03-04" };
const NOT_MEASURED = { measured: false, draws: new Float64Array(1) };

describe("the notes on a comparison", () => {
  it("are none where the two are alike in everything, and in time or on one day", () => {
    expect(notesOf(read(BEFORE), read(AFTER))).toEqual([]);
    expect(notesOf(read(BEFORE), read({ ...AFTER, taken: BEFORE.taken }))).toEqual([]);
  });

  it("say that the change is given backwards", () => {
    const [note, ...others] = notesOf(read(AFTER), read(BEFORE));
    expect(note).toMatch(/^"after" was taken after "before".*backwards/);
    expect(others).toEqual([]);
  });

  it.each([
    ["the later", read(BEFORE), (play: Partial<Survey>) => read({ ...AFTER, ...play }, { asPairs: true })],
    ["the earlier", read(AFTER), (play: Partial<Survey>) => read({ ...BEFORE, ...play }, { asPairs: true })],
  ])("say of two ways of measuring what became of the drive play of %s", (_, sweeps, pairs) => {
    const of = (play: Partial<Survey>): readonly string[] => {
      const two = [sweeps, pairs(play)].toSorted((a, b) => a.survey.taken.localeCompare(b.survey.taken));
      return notesOf(two[0], two[1]);
    };
    const { id } = pairs({}).survey;
    const [way, stated, ...others] = of({ drivePlay: 0.02 });
    expect(way).toMatch(/push–pull.*pairs/);
    expect(stated).toContain(`subtracted from the readings of "${id}"`);
    expect(others).toEqual([]);
    expect(of({ drivePlay: 0 })[1]).toBe(stated);
    expect(of({})[1]).toMatch(new RegExp(`"${id}".*was not stated`));
  });

  it.each([
    ["limit of error", { error: 0.003 }],
    ["hysteresis", { hysteresis: 0.003 }],
  ])("say what the indicators' stated %s does to the change", (_, stated) => {
    const notes = (from: object, to: object): readonly string[] =>
      notesOf(
        read({ ...BEFORE, indicator: { name: "no. 4", ...from } }),
        read({ ...AFTER, indicator: { name: "no. 4", ...to } }),
      );
    expect(notes(stated, stated)).toEqual([expect.stringMatching(/same indicator.*cancels/)]);
    expect(notes({}, stated)).toHaveLength(1);
    expect(notes({ ...stated, name: "no. 5" }, {})).toEqual([
      expect.stringMatching(/do not name.*counts in full/),
    ]);
    expect(notes({ error: 0, hysteresis: 0 }, {})).toEqual([]);
  });

  it("say in which of them end float was not measured", () => {
    const [before, after] = [read(BEFORE), read(AFTER)];
    const unmeasured = (of: Partial<Survey>): AssessedSurvey => read(of, { endFloat: NOT_MEASURED });
    const told = (from: AssessedSurvey, to: AssessedSurvey): readonly string[] =>
      notesOf(from, to).map((note) => note.slice(0, note.indexOf(":")));
    expect(told(unmeasured(BEFORE), after)).toEqual(['End float was not measured in "before"']);
    expect(told(before, unmeasured(AFTER))).toEqual(['End float was not measured in "after"']);
    expect(told(unmeasured(BEFORE), unmeasured(AFTER))).toEqual([
      'End float was not measured in "before" and "after"',
    ]);
  });
});
