import { describe, expect, test } from "vitest";
import { withoutJoined, withSurveysOf } from "../../../src/app/editing/joinSurveys.ts";
import type { Inspection, Survey } from "../../../src/inspection/schema.ts";
import { type EditorState, NO_PENDING_INPUT } from "../../../src/records/editorState.ts";
import { exampleInspection } from "../../report/exampleInspection.ts";

const [before] = exampleInspection().surveys;
if (before === undefined) throw new Error("The example has a survey.");
const after: Survey = { ...before, id: "after", taken: "2026-04-02", stage: "after-adjusting" };
const adjusted = { date: "2026-04-01", kind: "adjusted", note: "Nut taken up." } as const;

const here: EditorState = { inspection: exampleInspection(), draft: NO_PENDING_INPUT };
const withSurveys = (surveys: readonly Survey[], part: Partial<Inspection> = {}): Inspection => ({
  ...exampleInspection(),
  surveys,
  ...part,
});

function joined(other: Inspection, state = here) {
  const outcome = withSurveysOf(state, other);
  if (!outcome.ok) throw new Error(outcome.problem.what);
  return outcome.value;
}

const idsOf = ({ inspection }: EditorState) => inspection?.surveys.map(({ id }) => id);

describe("surveys of another file", () => {
  test("are added after those that are here, which are passed over, and the slide stays as it is", () => {
    const slide = { ...exampleInspection().slide, backlashLimit: 0.3 };
    const { state, surveys } = joined(withSurveys([before, after], { slide }));
    expect(idsOf(state)).toEqual(["before", "after"]);
    expect(surveys).toEqual(["after"]);
    expect(state.inspection?.slide).toEqual(exampleInspection().slide);
  });

  test("get an id of their own where another survey or the slide has theirs", () => {
    const other = { ...after, id: "before" };
    expect(joined(withSurveys([other, { ...other, note: "again" }])).surveys).toEqual([
      "before-2",
      "before-3",
    ]);
    expect(joined(withSurveys([{ ...after, id: "cross-slide" }])).surveys).toEqual(["cross-slide-2"]);
  });

  test("come in the unit of the slide here", () => {
    const inches = { ...exampleInspection().slide, units: "in" } as const;
    const readings = [{ position: 10, backlash: 0.01 }];
    const { state } = joined(withSurveys([{ ...after, indicator: undefined, readings }], { slide: inches }));
    expect(state.inspection?.surveys[1]?.readings).toEqual([{ position: 254, backlash: 0.254 }]);
  });

  test("bring their events along, once", () => {
    const { state, events } = joined(withSurveys([after], { events: [adjusted] }));
    expect([state.inspection?.events, events]).toEqual([[adjusted], [adjusted]]);
    const twice = joined(withSurveys([{ ...after, id: "later" }], { events: [adjusted] }), state);
    expect([twice.state.inspection?.events, twice.events]).toEqual([[adjusted], []]);
  });

  test("are refused where they are of another slide, with the reason", () => {
    const other = exampleInspection({ id: "saddle", name: "Saddle" });
    expect(withSurveysOf(here, { ...other, surveys: [after] })).toMatchObject({
      ok: false,
      problem: {
        what: expect.stringContaining('"Saddle" (saddle) is another slide than "Cross slide" (cross-slide)'),
      },
    });
  });

  test("are refused where none is new", () => {
    expect(withSurveysOf(here, exampleInspection())).toMatchObject({
      ok: false,
      problem: { what: "all its surveys are here already" },
    });
  });

  test("can be taken away again, with their events and without what was added since", () => {
    const added = joined(withSurveys([after], { events: [adjusted] }));
    const { inspection } = added.state;
    if (inspection === null) throw new Error("There is a slide.");
    const since = { ...adjusted, note: "Gib set." };
    const state = { ...added.state, inspection: { ...inspection, events: [adjusted, since] } };
    const back = withoutJoined(state, added);
    expect(idsOf(back)).toEqual(["before"]);
    expect(back.inspection?.events).toEqual([since]);
  });
});
