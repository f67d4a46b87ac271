import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { nextTurn, stationsAmong, withoutNextTurn } from "../../../../src/app/entry/guide/nextStation.ts";
import { listOf, orderOf, readPositions } from "../../../../src/app/entry/guide/stationList.ts";
import type { GuideState } from "../../../../src/records/editorState.ts";

const guide = (stations: readonly number[], part: Partial<GuideState> = {}): GuideState => ({
  survey: "s",
  isOpen: true,
  at: "readings",
  stations,
  typing: {},
  ...part,
});
const at = (...positions: readonly number[]) => positions.map((position) => ({ position, backlash: 0.2 }));

describe("whose turn it is", () => {
  const OUT_AND_BACK = [0, 25, 50, 50, 25, 0];

  test("goes along the plan, out and back", () => {
    expect(nextTurn(guide(OUT_AND_BACK), [], "mm")).toEqual({
      position: 0,
      station: 1,
      stations: 3,
      reading: 1,
      left: 5,
    });
    expect(nextTurn(guide(OUT_AND_BACK), at(0, 25, 50), "mm")).toMatchObject({
      position: 50,
      station: 3,
      reading: 2,
      left: 2,
    });
    expect(nextTurn(guide(OUT_AND_BACK), at(0, 25, 50, 50, 25, 0), "mm")).toBeNull();
  });

  test("comes back to a station whose reading was struck", () => {
    const readings = at(0, 25, 50).map((reading, index) =>
      index === 1 ? { ...reading, excluded: "Knocked" } : reading,
    );
    expect(nextTurn(guide(OUT_AND_BACK), readings, "mm")).toMatchObject({ position: 25, reading: 1 });
  });

  test("is that of a station chosen out of turn, planned or not", () => {
    expect(nextTurn(guide(OUT_AND_BACK, { chosen: 50 }), at(0), "mm")).toMatchObject({
      position: 50,
      station: 3,
      left: 4,
    });
    expect(nextTurn(guide(OUT_AND_BACK, { chosen: 37 }), at(0), "mm")).toMatchObject({
      position: 37,
      station: null,
      left: 5,
    });
  });

  test("skips one turn at a time", () => {
    expect(withoutNextTurn(guide(OUT_AND_BACK), at(0), "mm")).toEqual([0, 50, 50, 25, 0]);
    expect(withoutNextTurn(guide([0]), at(0), "mm")).toEqual([0]);
  });

  test("takes positions within a micrometre for one station, in inches too", () => {
    expect(stationsAmong([0, 1, 1.00003, 1.0001], "in")).toEqual([0, 1, 1.0001]);
  });
});

const positions = fc.array(fc.integer({ min: 0, max: 60 }), { maxLength: 30 });

test("reading whatever is the next turn reads every planned station as often as planned", () => {
  fc.assert(
    fc.property(positions, (stations) => {
      const read: number[] = [];
      for (let turn = nextTurn(guide(stations), [], "mm"); turn !== null; ) {
        read.push(turn.position);
        turn = nextTurn(guide(stations), at(...read), "mm");
      }
      expect(read).toEqual(stations);
    }),
  );
});

test("a list of stations and whether they are read back, too, is the order that it stands for", () => {
  fc.assert(
    fc.property(positions, fc.boolean(), (list, isBackToo) => {
      const order = orderOf({ positions: list, isBackToo });
      expect(orderOf(listOf(order))).toEqual(order);
    }),
  );
});

test("positions are typed with anything between them", () => {
  expect(readPositions("0, 25; 50\n75.5  3-1/2", "in")).toEqual({ ok: true, value: [0, 25, 50, 75.5, 3.5] });
  expect(readPositions("  ", "mm")).toEqual({ ok: true, value: [] });
  expect(readPositions("0 here 50", "mm").ok).toBe(false);
});
