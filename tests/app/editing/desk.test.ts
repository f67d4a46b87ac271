import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { ColumnName } from "../../../src/app/editing/columns.ts";
import { Desk } from "../../../src/app/editing/desk.ts";
import { blankRow } from "../../../src/app/editing/rows.ts";
import { EMPTY_DRAFT, type KeptInspection } from "../../../src/records/record.ts";
import { crossSlide } from "./crossSlide.ts";

const INSPECTION = crossSlide([
  {
    id: "first",
    taken: "2026-03-14",
    stage: "routine",
    method: "push-pull",
    readings: [
      { position: 0, backlash: 0.2 },
      { position: 25, backlash: 0.21, note: "kept" },
    ],
  },
]);

const KEPT: KeptInspection = {
  id: "kept",
  revision: 1,
  savedAt: "",
  inspection: INSPECTION,
  draft: EMPTY_DRAFT,
};

/** A desk, and what it saved last. */
function deskOn(kept: KeptInspection = KEPT) {
  let saved = kept;
  const desk = new Desk(kept, async (work) => {
    saved = { ...work, revision: work.revision + 1 };
    return { ok: true, kept: saved };
  });
  const reopened = async (): Promise<Desk> => {
    await desk.keepNow();
    return deskOn(saved).desk;
  };
  return { desk, reopened };
}

const readingsOf = (desk: Desk) => desk.survey?.readings;
const texts = (desk: Desk) => desk.rows.map(({ cells, marks }) => [cells, marks]);
const keyAt = (desk: Desk, index: number): number => desk.rows.at(index)?.key ?? -1;

describe("what was done on the desk", () => {
  test("is taken back and done again, one cell at a time", () => {
    const { desk } = deskOn();
    const row = blankRow();
    desk.beginRow(row, "position", "5");
    desk.enterCell(row.key, "position", "50");
    desk.enterCell(row.key, "backlash", "0");
    desk.enterCell(row.key, "backlash", "0.");
    desk.enterCell(row.key, "backlash", "0.22");
    expect(readingsOf(desk)?.[2]).toMatchObject({ position: 50, backlash: 0.22 });
    desk.undo();
    expect(desk.rows.at(-1)?.cells).toEqual({ position: "50" });
    desk.undo();
    expect(desk.rows).toHaveLength(2);
    desk.redo();
    desk.redo();
    expect(readingsOf(desk)?.[2]).toMatchObject({ position: 50, backlash: 0.22 });
    expect(desk.redo()).toBeNull();
  });

  test("is taken back after the page was loaded again, and what was taken back is done again", async () => {
    const { desk, reopened } = deskOn();
    desk.addReading({ position: "50", backlash: "0.20" });
    desk.addReading({ position: "75", backlash: "2.1" });
    desk.strike(keyAt(desk, 2), "Misread");
    desk.undo();
    const again = await reopened();
    expect(again.canRedo).toBe(true);
    again.undo();
    expect(readingsOf(again)).toHaveLength(3);
    again.redo();
    again.redo();
    expect(readingsOf(again)?.map(({ excluded }) => excluded)).toEqual([
      undefined,
      undefined,
      "Misread",
      undefined,
    ]);
  });

  test("takes back a strike, a deletion, a field and the stations", () => {
    const { desk } = deskOn();
    desk.strike(keyAt(desk, 0), "Knocked");
    desk.deleteRow(keyAt(desk, 1));
    desk.enterField({ survey: "first", path: "endFloat" }, "0.01");
    desk.enterField({ survey: "first", path: "endFloat" }, "0.01  0.02");
    desk.guideAs({ survey: "first", isOpen: true, at: "readings", stations: [0, 50, 100], typing: {} });
    desk.guideAs({ survey: "first", isOpen: true, at: "readings", stations: [0, 100], typing: {} });
    desk.undo();
    expect(desk.guide?.stations).toEqual([0, 50, 100]);
    desk.undo();
    expect(desk.survey?.endFloat).toBeUndefined();
    desk.undo();
    desk.undo();
    expect(readingsOf(desk)).toEqual(INSPECTION.surveys[0]?.readings);
    expect(desk.canUndo).toBe(false);
  });

  test("cannot be done again once something else is done", () => {
    const { desk } = deskOn();
    desk.addReading({ position: "50", backlash: "0.2" });
    desk.undo();
    desk.addReading({ position: "60", backlash: "0.2" });
    expect(desk.redo()).toBeNull();
    expect(readingsOf(desk)?.map((reading) => reading.position)).toEqual([0, 25, 60]);
  });

  test("that no longer fits, as after a change from outside, changes nothing", async () => {
    const { desk, reopened } = deskOn();
    desk.enterCell(keyAt(desk, 1), "backlash", "0.30");
    const again = await reopened();
    const { steps } = again.work.draft;
    const other = deskOn({ ...KEPT, draft: { ...EMPTY_DRAFT, ...(steps && { steps }) } }).desk;
    expect(other.undo()).toBeNull();
    expect(readingsOf(other)).toEqual(INSPECTION.surveys[0]?.readings);
  });
});

test("the two ends of a working range are taken once both are there, and go again together", () => {
  const { desk } = deskOn();
  const range = () => desk.inspection?.slide.workingRange;
  const type = (end: "from" | "to", text: string) =>
    desk.enterField({ survey: null, path: `workingRange.${end}` }, text);
  type("from", "20");
  expect(range()).toBeUndefined();
  type("to", "400");
  expect(range()).toBeUndefined();
  type("to", "200");
  expect(range()).toEqual({ from: 20, to: 200 });
  expect(desk.work.draft.fields).toEqual([]);
  type("from", "");
  type("to", "");
  expect(range()).toBeUndefined();
  expect(desk.work.draft.fields).toEqual([]);
  desk.undo();
  desk.undo();
  expect(range()).toEqual({ from: 20, to: 200 });
});

test("a reading typed has its time, one that was there has none, and none gets one by being corrected", () => {
  const { desk } = deskOn();
  desk.addReading({ position: "50", backlash: "0.2" });
  desk.enterCell(keyAt(desk, 0), "backlash", "0.19");
  const times = readingsOf(desk)?.map(({ time }) => time);
  expect(times?.slice(0, 2)).toEqual([undefined, undefined]);
  expect(times?.[2]).toMatch(/^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d[+-]\d\d:\d\d$/);
  expect(Math.abs(Date.now() - Date.parse(times?.[2] ?? ""))).toBeLessThan(60_000);
});

type Act = (desk: Desk, at: number, text: string) => void;

const ACTS: readonly Act[] = [
  (desk, _at, text) => desk.beginRow(blankRow(), "position", text),
  (desk, at, text) => desk.addReading({ position: String(at), backlash: text }),
  (desk, at, text) => desk.enterCell(keyAt(desk, at % desk.rows.length), columnOf(at), text),
  (desk, at, text) => desk.strike(keyAt(desk, at % desk.rows.length), text),
  (desk, at) => desk.unstrike(keyAt(desk, at % desk.rows.length)),
  (desk, at) => desk.deleteRow(keyAt(desk, at % desk.rows.length)),
];
const columnOf = (at: number): ColumnName => (at % 2 === 0 ? "position" : "backlash");

test("whatever was done, taking all of it back leads to where it began, and doing all of it again to where it ended", () => {
  const act = fc.tuple(
    fc.constantFrom(...ACTS),
    fc.nat(20),
    fc.constantFrom("", "0.2", "0.2x", "12 thou", "1e9"),
  );
  fc.assert(
    fc.property(fc.array(act, { maxLength: 25 }), (acts) => {
      const { desk } = deskOn();
      const began = texts(desk);
      for (const [perform, at, text] of acts) if (desk.rows.length > 0) perform(desk, at, text);
      const ended = texts(desk);
      while (desk.undo() !== null);
      expect(texts(desk)).toEqual(began);
      while (desk.redo() !== null);
      expect(texts(desk)).toEqual(ended);
    }),
  );
});

describe("rows that wait for their readings", () => {
  const waiting = () => {
    const { desk } = deskOn();
    desk.setRows([
      ...desk.rows,
      ...["50", "75", "100"].map((position) => ({ ...blankRow(), cells: { position } })),
    ]);
    return desk;
  };
  const positions = (desk: Desk) => desk.rows.map(({ cells }) => cells.position);

  test("are answered by readings taken there, which keep the order of taking", () => {
    const desk = waiting();
    desk.addReading({ position: "75", backlash: "0.22" });
    desk.addReading({ position: "50.0", backlash: "0.21" });
    desk.addReading({ position: "60", backlash: "0.23" });
    expect(readingsOf(desk)?.map(({ position }) => position)).toEqual([0, 25, 75, 50, 60]);
    expect(positions(desk)).toEqual(["0", "25", "75", "50.0", "60", "100"]);
    desk.undo();
    desk.undo();
    desk.undo();
    expect(positions(desk)).toEqual(["0", "25", "50", "75", "100"]);
  });

  test("have their time from when the first figure is typed", () => {
    const desk = waiting();
    desk.enterCell(keyAt(desk, 2), "backlash", "0.22");
    expect(readingsOf(desk)?.[2]?.time).toMatch(/^\d{4}-/);
  });
});
