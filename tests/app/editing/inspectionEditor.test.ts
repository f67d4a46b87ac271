import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { ColumnName } from "../../../src/app/editing/columns.ts";
import { InspectionEditor } from "../../../src/app/editing/inspectionEditor.ts";
import { blankRow } from "../../../src/app/editing/rows.ts";
import { NO_PENDING_INPUT, type StoredInspection } from "../../../src/records/editorState.ts";
import { crossSlide } from "./crossSlide.ts";

const INSPECTION = crossSlide([
  {
    id: "first",
    taken: "2026-03-14",
    stage: "routine",
    method: "push-pull",
    readings: [
      { position: 0, backlash: 0.2 },
      { position: 25, backlash: 0.21, note: "gib tight" },
    ],
  },
]);

const STORED: StoredInspection = {
  id: "a",
  revision: 1,
  savedAt: "",
  inspection: INSPECTION,
  draft: NO_PENDING_INPUT,
};

/** An editor, and what it saved last. */
function editorOn(stored: StoredInspection = STORED) {
  let saved = stored;
  const editor = new InspectionEditor(stored, async (state) => {
    saved = { ...state, revision: state.revision + 1 };
    return { ok: true, stored: saved };
  });
  const reopened = async (): Promise<InspectionEditor> => {
    await editor.saveNow();
    return editorOn(saved).editor;
  };
  return { editor, reopened };
}

const readingsOf = (editor: InspectionEditor) => editor.survey?.readings;
const texts = (editor: InspectionEditor) => editor.rows.map(({ cells, marks }) => [cells, marks]);
const keyAt = (editor: InspectionEditor, index: number): number => editor.rows.at(index)?.key ?? -1;

describe("undo and redo", () => {
  test("go one cell at a time", () => {
    const { editor } = editorOn();
    const row = blankRow();
    editor.beginRow(row, "position", "5");
    editor.enterCell(row.key, "position", "50");
    editor.enterCell(row.key, "backlash", "0");
    editor.enterCell(row.key, "backlash", "0.");
    editor.enterCell(row.key, "backlash", "0.22");
    expect(readingsOf(editor)?.[2]).toMatchObject({ position: 50, backlash: 0.22 });
    editor.undo();
    expect(editor.rows.at(-1)?.cells).toEqual({ position: "50" });
    editor.undo();
    expect(editor.rows).toHaveLength(2);
    editor.redo();
    editor.redo();
    expect(readingsOf(editor)?.[2]).toMatchObject({ position: 50, backlash: 0.22 });
    expect(editor.redo()).toBeNull();
  });

  test("work after the page was loaded again", async () => {
    const { editor, reopened } = editorOn();
    editor.addReading({ position: "50", backlash: "0.20" });
    editor.addReading({ position: "75", backlash: "2.1" });
    editor.strike(keyAt(editor, 2), "Misread");
    editor.undo();
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

  test("cover a strike, a deletion, a field and the stations", () => {
    const { editor } = editorOn();
    editor.strike(keyAt(editor, 0), "Knocked");
    editor.deleteRow(keyAt(editor, 1));
    editor.enterField({ survey: "first", path: "endFloat" }, "0.01");
    editor.enterField({ survey: "first", path: "endFloat" }, "0.01  0.02");
    editor.setGuide({ survey: "first", isOpen: true, at: "readings", stations: [0, 50, 100], typing: {} });
    editor.setGuide({ survey: "first", isOpen: true, at: "readings", stations: [0, 100], typing: {} });
    editor.undo();
    expect(editor.guide?.stations).toEqual([0, 50, 100]);
    editor.undo();
    expect(editor.survey?.endFloat).toBeUndefined();
    editor.undo();
    editor.undo();
    expect(readingsOf(editor)).toEqual(INSPECTION.surveys[0]?.readings);
    expect(editor.canUndo).toBe(false);
  });

  test("cannot redo once something else is done", () => {
    const { editor } = editorOn();
    editor.addReading({ position: "50", backlash: "0.2" });
    editor.undo();
    editor.addReading({ position: "60", backlash: "0.2" });
    expect(editor.redo()).toBeNull();
    expect(readingsOf(editor)?.map((reading) => reading.position)).toEqual([0, 25, 60]);
  });

  test("change nothing where the step no longer fits, as after a change from elsewhere", async () => {
    const { editor, reopened } = editorOn();
    editor.enterCell(keyAt(editor, 1), "backlash", "0.30");
    const again = await reopened();
    const { steps } = again.state.draft;
    const other = editorOn({ ...STORED, draft: { ...NO_PENDING_INPUT, ...(steps && { steps }) } }).editor;
    expect(other.undo()).toBeNull();
    expect(readingsOf(other)).toEqual(INSPECTION.surveys[0]?.readings);
  });
});

test("the two ends of a working range are entered and deleted together", () => {
  const { editor } = editorOn();
  const range = () => editor.inspection?.slide.workingRange;
  const type = (end: "from" | "to", text: string) =>
    editor.enterField({ survey: null, path: `workingRange.${end}` }, text);
  type("from", "20");
  expect(range()).toBeUndefined();
  type("to", "400");
  expect(range()).toBeUndefined();
  type("to", "200");
  expect(range()).toEqual({ from: 20, to: 200 });
  expect(editor.state.draft.fields).toEqual([]);
  type("from", "");
  type("to", "");
  expect(range()).toBeUndefined();
  expect(editor.state.draft.fields).toEqual([]);
  editor.undo();
  editor.undo();
  expect(range()).toEqual({ from: 20, to: 200 });
});

test("a typed reading gets the time; a correction does not change it", () => {
  const { editor } = editorOn();
  editor.addReading({ position: "50", backlash: "0.2" });
  editor.enterCell(keyAt(editor, 0), "backlash", "0.19");
  const times = readingsOf(editor)?.map(({ time }) => time);
  expect(times?.slice(0, 2)).toEqual([undefined, undefined]);
  expect(times?.[2]).toMatch(/^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d[+-]\d\d:\d\d$/);
  expect(Math.abs(Date.now() - Date.parse(times?.[2] ?? ""))).toBeLessThan(60_000);
});

type Act = (editor: InspectionEditor, at: number, text: string) => void;

const ACTS: readonly Act[] = [
  (editor, _at, text) => editor.beginRow(blankRow(), "position", text),
  (editor, at, text) => editor.addReading({ position: String(at), backlash: text }),
  (editor, at, text) => editor.enterCell(keyAt(editor, at % editor.rows.length), columnOf(at), text),
  (editor, at, text) => editor.strike(keyAt(editor, at % editor.rows.length), text),
  (editor, at) => editor.unstrike(keyAt(editor, at % editor.rows.length)),
  (editor, at) => editor.deleteRow(keyAt(editor, at % editor.rows.length)),
];
const columnOf = (at: number): ColumnName => (at % 2 === 0 ? "position" : "backlash");

test("undoing all steps leads back to the start, and redoing them to the end, whatever they are", () => {
  const act = fc.tuple(
    fc.constantFrom(...ACTS),
    fc.nat(20),
    fc.constantFrom("", "0.2", "0.2x", "12 thou", "1e9"),
  );
  fc.assert(
    fc.property(fc.array(act, { maxLength: 25 }), (acts) => {
      const { editor } = editorOn();
      const began = texts(editor);
      for (const [perform, at, text] of acts) if (editor.rows.length > 0) perform(editor, at, text);
      const ended = texts(editor);
      while (editor.undo() !== null);
      expect(texts(editor)).toEqual(began);
      while (editor.redo() !== null);
      expect(texts(editor)).toEqual(ended);
    }),
  );
});

describe("rows that await a reading", () => {
  const waiting = () => {
    const { editor } = editorOn();
    editor.setRows([
      ...editor.rows,
      ...["50", "75", "100"].map((position) => ({ ...blankRow(), cells: { position } })),
    ]);
    return editor;
  };
  const positions = (editor: InspectionEditor) => editor.rows.map(({ cells }) => cells.position);

  test("are replaced by readings at their position, in the order of taking", () => {
    const editor = waiting();
    editor.addReading({ position: "75", backlash: "0.22" });
    editor.addReading({ position: "50.0", backlash: "0.21" });
    editor.addReading({ position: "60", backlash: "0.23" });
    expect(readingsOf(editor)?.map(({ position }) => position)).toEqual([0, 25, 75, 50, 60]);
    expect(positions(editor)).toEqual(["0", "25", "75", "50.0", "60", "100"]);
    editor.undo();
    editor.undo();
    editor.undo();
    expect(positions(editor)).toEqual(["0", "25", "50", "75", "100"]);
  });

  test("get the time when the first figure is typed", () => {
    const editor = waiting();
    editor.enterCell(keyAt(editor, 2), "backlash", "0.22");
    expect(readingsOf(editor)?.[2]?.time).toMatch(/^\d{4}-/);
  });
});
