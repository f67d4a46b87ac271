import { describe, expect, test } from "vitest";
import { InspectionEditor } from "../../../src/app/editing/inspectionEditor.ts";
import type { GivenVerdict, SlideEvent } from "../../../src/inspection/schema.ts";
import { NO_PENDING_INPUT, type StoredInspection } from "../../../src/records/editorState.ts";
import { crossSlide } from "./crossSlide.ts";

const INSPECTION = crossSlide(
  ["first", "second"].map((id) => ({
    id,
    taken: "2026-03-14",
    stage: "routine",
    method: "push-pull",
    readings: [{ position: 0, backlash: 0.2 }],
  })),
);

function editorOn(inspection = INSPECTION) {
  let saved: StoredInspection = { id: "a", revision: 1, savedAt: "", inspection, draft: NO_PENDING_INPUT };
  const open = (): InspectionEditor =>
    new InspectionEditor(saved, async (inspection) => {
      saved = { ...inspection, revision: inspection.revision + 1 };
      return { ok: true, stored: saved };
    });
  const editor = open();
  const reopened = async (): Promise<InspectionEditor> => {
    await editor.saveNow();
    return open();
  };
  return { editor, reopened };
}

const ADJUSTED: SlideEvent = { date: "2026-03-15", kind: "adjusted", note: "Nut taken up" };
const GIB: SlideEvent = { date: "2026-03-16", kind: "other", note: "Gib set" };

test("undo of a field of another survey shows that survey and leaves the readings of both", () => {
  const { editor } = editorOn();
  editor.chooseSurvey("second");
  editor.addReading({ position: "50", backlash: "0.3" });
  editor.chooseSurvey("first");
  editor.enterField({ survey: "first", path: "endFloat" }, "0.01");
  editor.chooseSurvey("second");
  const readings = editor.inspection?.surveys.map((survey) => survey.readings);
  editor.undo();
  expect(editor.survey?.id).toBe("first");
  expect(editor.survey?.endFloat).toBeUndefined();
  expect(editor.inspection?.surveys.map((survey) => survey.readings)).toEqual(readings);
});

describe("events", () => {
  test("are undone and redone, also after reopening", async () => {
    const { editor, reopened } = editorOn();
    editor.setEvents([ADJUSTED]);
    editor.setEvents([ADJUSTED, GIB]);
    const later = await reopened();
    later.undo();
    expect(later.inspection?.events).toEqual([ADJUSTED]);
    later.undo();
    expect(later.inspection).toEqual(INSPECTION);
    later.redo();
    later.redo();
    expect(later.inspection?.events).toEqual([ADJUSTED, GIB]);
  });

  test("typed key by key are one step per field", () => {
    const { editor } = editorOn();
    editor.setEvents([{ ...ADJUSTED, note: "" }]);
    for (const note of ["N", "Nu", "Nut"]) editor.setEvents([{ ...ADJUSTED, note }], "event 0 note");
    editor.setEvents([{ ...ADJUSTED, note: "Nut", date: "2026-04-01" }], "event 0 date");
    editor.undo();
    expect(editor.inspection?.events?.[0]).toMatchObject({ note: "Nut", date: "2026-03-15" });
    editor.undo();
    expect(editor.inspection?.events?.[0]?.note).toBe("");
  });

  test("changed from elsewhere since are not undone", () => {
    const { editor } = editorOn();
    editor.setEvents([ADJUSTED]);
    editor.setState({ ...editor.state, inspection: { ...INSPECTION, events: [GIB] } });
    editor.undo();
    expect(editor.inspection?.events).toEqual([GIB]);
  });
});

describe("verdicts", () => {
  const given = (survey: string, change: Partial<GivenVerdict> = {}): GivenVerdict => ({
    survey,
    given: "2026-03-14T10:00:00Z",
    version: "0.1.0",
    verdict: "adjust-nut",
    title: "Adjust the nut",
    chance: 0.98,
    summary: "Take up the nut.",
    ...change,
  });

  test("are noted again only when they or the program's version change", () => {
    const { editor } = editorOn();
    const noted = [
      given("first"),
      given("second"),
      given("first", { verdict: "remake-screw", title: "Remake the screw" }),
      given("first", { verdict: "remake-screw", title: "Remake the screw", version: "0.2.0" }),
      given("first"),
    ];
    for (const each of noted) {
      editor.noteVerdict(each);
      editor.noteVerdict({ ...each, given: "2026-03-20T10:00:00Z", chance: 0.97 });
    }
    expect(editor.inspection?.verdicts).toEqual(noted);
  });

  test("are deleted and restored with their survey, in their place", () => {
    const { editor } = editorOn();
    for (const survey of ["first", "second"]) editor.noteVerdict(given(survey));
    const undo = editor.deleteSurvey("first");
    expect(editor.inspection?.verdicts).toEqual([given("second")]);
    editor.noteVerdict(given("second", { version: "0.2.0" }));
    undo();
    expect(editor.inspection?.verdicts).toEqual([
      given("first"),
      given("second"),
      given("second", { version: "0.2.0" }),
    ]);
  });
});
