import { describe, expect, test } from "vitest";
import { InspectionEditor } from "../../../../src/app/editing/inspectionEditor.ts";
import { askedOf } from "../../../../src/app/entry/guide/askedFigures.ts";
import { asCell, enter, figureBefore, stageOf } from "../../../../src/app/entry/guide/figureInput.ts";
import { nextTurn } from "../../../../src/app/entry/guide/nextStation.ts";
import type { Inspection, Method } from "../../../../src/inspection/schema.ts";
import { lengthUnit } from "../../../../src/intake/lengthUnit.ts";
import { NO_PENDING_INPUT } from "../../../../src/records/editorState.ts";

const inspection = (method: Method): Inspection => ({
  format: "tightspot-inspection",
  version: 1,
  slide: {
    id: "slide",
    name: "Table",
    units: "in",
    travel: { from: 0, to: 14 },
    screw: { lead: 0.25 },
    backlashLimit: 0.008,
  },
  surveys: [{ id: "first", taken: "2026-03-14", stage: "routine", method, readings: [] }],
});

/** An editor with a guide along two stations, and what typing and Enter do there. */
function reading(method: Method) {
  const kept = {
    id: "kept",
    revision: 0,
    savedAt: "",
    inspection: inspection(method),
    draft: NO_PENDING_INPUT,
  };
  const editor = new InspectionEditor(kept, async (saved) => ({ ok: true, stored: saved }));
  editor.setGuide({ survey: "first", isOpen: true, at: "readings", stations: [0, 7], typing: {} });
  const now = () => {
    const { guide, survey } = editor;
    const asked = survey && askedOf(survey, "in");
    if (guide === null || survey === null || asked === null) throw new Error("There is a guide.");
    return { guide, survey, asked };
  };
  const type = (text: string): void => {
    const { guide, asked } = now();
    editor.setGuide({ ...guide, typing: { ...guide.typing, [stageOf(guide, asked)]: text } });
  };
  const press = () => {
    const { guide, survey, asked } = now();
    return enter(editor, guide, nextTurn(guide, survey.readings, "in"), asked, "in");
  };
  const figures = () => now().survey.readings.map(({ time: _time, ...figure }) => figure);
  return { editor, now, type, press, figures };
}

describe("a figure as it goes into a cell", () => {
  test.each([
    ["0.210", undefined, "0.210"],
    ["0.210 in", undefined, "0.210"],
    ["0,20", undefined, "0.20"],
    [".012", undefined, ".012"],
    ["12 thou", undefined, "0.012"],
    ["3-1/2", undefined, "3.5"],
    ["12", "thou", "0.012"],
    ["0.3048", "mm", "0.012"],
    ["+0.213", undefined, "0.213"],
  ])("%j, bare in %s, is %s", (text, unit, cell) => {
    expect(asCell(text, "in", unit === undefined ? undefined : lengthUnit(unit))).toEqual({
      ok: true,
      value: cell,
    });
  });
});

test("a pair is whole after both its figures, in whatever unit each was typed", () => {
  const { editor, now, type, press, figures } = reading("indicator-pair");
  editor.setGuide({ ...now().guide, unit: "thou" });
  type("12");
  expect(press()).toEqual({ ok: true, value: { to: "figure" } });
  expect(figures()).toEqual([]);
  editor.setGuide({ ...now().guide, unit: "mm" });
  type("0.0254");
  expect(press()).toMatchObject({ ok: true, value: { to: "reading", position: 0 } });
  expect(figures()).toEqual([{ position: 0, advancing: 0.012, retracting: 0.001 }]);
});

test("the first figure of a pair can be gone back to, and stays what it is", () => {
  const { editor, now, type, press, figures } = reading("indicator-pair");
  editor.setGuide({ ...now().guide, unit: "thou" });
  type("12");
  press();
  const back = figureBefore(now().guide, now().asked);
  expect(back?.typing).toEqual({ advancing: "0.012 in" });
  if (back !== null) editor.setGuide(back);
  press();
  type("1");
  press();
  expect(figures()).toEqual([{ position: 0, advancing: 0.012, retracting: 0.001 }]);
  expect(figureBefore(now().guide, now().asked)).toBeNull();
});

test("what cannot be read is not taken, and stays as typed", () => {
  const { now, type, press, figures } = reading("push-pull");
  type("0.0x");
  expect(press().ok).toBe(false);
  expect(now().guide.typing).toEqual({ backlash: "0.0x" });
  expect(figures()).toEqual([]);
});

test("another position is read next, and then the plan goes on", () => {
  const { editor, now, type, press, figures } = reading("push-pull");
  editor.setGuide({ ...now().guide, typing: { position: "" } });
  type("3-1/2");
  expect(press()).toEqual({ ok: true, value: { to: "station" } });
  for (const value of [".008", ".007"]) {
    type(value);
    press();
  }
  expect(figures()).toEqual([
    { position: 3.5, backlash: 0.008 },
    { position: 0, backlash: 0.007 },
  ]);
});
