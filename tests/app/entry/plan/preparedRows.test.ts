import { describe, expect, it } from "vitest";
import { blankRow, type Row } from "../../../../src/app/editing/rows.ts";
import { preparedRows, withoutPrepared } from "../../../../src/app/entry/plan/preparedRows.ts";
import type { Survey } from "../../../../src/inspection/schema.ts";
import { BARE, planned } from "../../../report/plan/planned.ts";

const SURVEY: Survey = {
  id: "survey-1",
  taken: "2026-03-14",
  stage: "routine",
  method: "push-pull",
  readings: [],
};
const plan = planned({ ...BARE, travel: { from: 0, to: 100 } }, { stations: 5 });
const prepared = (rows: readonly Row[]) => preparedRows(plan, 1, rows, SURVEY, "mm");
const row = (cells: Row["cells"], marks: Row["marks"] = {}): Row => ({ ...blankRow(), cells, marks });
const places = (rows: readonly Row[]) => rows.map(({ cells }) => Number(cells.position));
const inOrder = plan.readings.map(({ position }) => position);

describe("rows prepared from a plan", () => {
  it("have the planned positions in their order, and nothing else", () => {
    expect(places(prepared([]))).toEqual(inOrder);
    for (const { cells, marks } of prepared([])) {
      expect(Object.keys(cells)).toEqual(["position"]);
      expect(marks).toEqual({});
    }
    expect(new Set(prepared([]).map(({ key }) => key)).size).toBe(inOrder.length);
  });

  it("leave out what was read already, once for each reading", () => {
    const first = inOrder.slice(0, 6).map((position) => row({ position: `${position},0`, backlash: "0.2" }));
    expect(places(prepared(first))).toEqual(inOrder.slice(6));
    expect(prepared([...first, ...prepared(first)])).toEqual([]);
  });

  it("are those of the first round, or of both, without what is there already", () => {
    const long = planned({ ...BARE, travel: { from: 0, to: 300 } });
    const [first = []] = long.rounds;
    const one = preparedRows(long, 1, [], SURVEY, "mm");
    expect(places(one)).toEqual([...first, ...first.toReversed()].map((at) => long.stations[at].position));
    const both = [...one, ...preparedRows(long, 2, one, SURVEY, "mm")];
    expect(places(both)).toEqual(long.readings.map(({ position }) => position));
  });

  it("ask again for a reading that is struck, and are not put off by readings elsewhere", () => {
    const struck = row({ position: "0", backlash: "0.9" }, { excluded: "knocked" });
    const elsewhere = row({ position: "1.5", backlash: "0.2" });
    const unreadable = row({ position: "?", backlash: "0.2" });
    expect(places(prepared([struck, elsewhere, unreadable]))).toEqual(inOrder);
  });

  it("can be taken away again, but for those in which something was written", () => {
    const mine = row({ position: "7", backlash: "0.2" });
    const added = prepared([mine]);
    const [first, ...rest] = added;
    const written = { ...first, cells: { ...first.cells, backlash: "0.21" } };
    expect(withoutPrepared([mine, written, ...rest], added)).toEqual([mine, written]);
    expect(withoutPrepared([mine, ...added], added)).toEqual([mine]);
  });
});
