import { describe, expect, test } from "vitest";
import { readCsv } from "../../src/intake/readCsv.ts";
import type { CsvOptions } from "../../src/intake/understanding.ts";
import { type UnitDoubt, unitDoubts } from "../../src/intake/unitDoubts.ts";

function doubts(
  log: string,
  travel?: { readonly from: number; readonly to: number },
  options: CsvOptions = { units: "mm" },
): readonly UnitDoubt[] {
  const csv = readCsv(log, options);
  if (!csv.ok) throw new Error(csv.problem.what);
  return unitDoubts(csv.value, travel);
}

const TRAVEL = { from: 0, to: 200 };

describe("a unit in which the figures make no sense", () => {
  test("is doubted where the lost motion would be of millimetres, and thousandths of an inch are offered", () => {
    expect(doubts("position,backlash\n0,12\n100,11\n200,12\n", TRAVEL)).toEqual([
      {
        of: "lost motion",
        columns: [2],
        what: "the lost motion is about 12 mm, on a travel of 200 mm",
        unit: "mm",
        likely: ["mm/100", "thou", "µm"],
      },
    ]);
  });

  test("is doubted where positions fill the travel only in inches", () => {
    const log = "position,backlash\n0,0.2\n3,0.2\n7,0.21\n";
    expect(doubts(log, { from: 0, to: 180 })).toMatchObject([
      {
        of: "position",
        columns: [1],
        what: "the positions go from 0 to 7 mm, on a travel of 180 mm",
        likely: ["in"],
      },
    ]);
  });

  test("is doubted where positions lie far beyond the travel but would fill it in another unit", () => {
    const log = "position,backlash\n0,0.008\n90,0.007\n178,0.008\n";
    expect(doubts(log, { from: 0, to: 7 }, { units: "in" })).toMatchObject([
      { of: "position", likely: ["mm"] },
    ]);
  });

  test("is doubted though the heading gives it, and not where the reader gave it", () => {
    const log = "position (mm),backlash (µm)\n0,0.2\n200,0.21\n";
    expect(doubts(log, TRAVEL)).toMatchObject([
      { of: "lost motion", unit: "µm", likely: ["mm", "thou", "mm/100"] },
    ]);
    const said = { columns: [{ column: 2, as: "backlash", unit: "µm" }] } as const;
    expect(doubts(log, TRAVEL, said)).toEqual([]);
  });

  test("may be no length at all: readings of a handwheel's dial differ by whole turns at its zero", () => {
    const log = "position (mm),forward,back\n0,98,3\n100,97,4\n200,99,2\n";
    expect(doubts(log, TRAVEL)).toMatchObject([
      { of: "lost motion", columns: [2, 3], likely: ["divisions", "µm", "mm/100", "thou"] },
    ]);
    expect(doubts(log, TRAVEL, { method: "dial-pair" })).toEqual([]);
  });

  test.each([
    ["an ordinary log", "position (mm),backlash (mm)\n0,0.2\n100,0.3\n200,0.25\n"],
    ["an ordinary log in inches", "position (in),backlash (thou)\n0,8\n4,9\n7.8,8\n"],
    ["a pair far from zero", "position (mm),forward (mm),back (mm)\n0,5,4.8\n200,7,6.8\n"],
    ["no lost motion at all", "position (mm),backlash (mm)\n0,0\n200,0\n"],
    ["one slip among sound readings", "position (mm),backlash (mm)\n0,0.2\n100,21\n200,0.2\n"],
    ["positions beyond the travel that no unit explains", "position (mm),backlash (mm)\n900,0.2\n950,0.2\n"],
    ["the first readings of a survey", "position (mm),backlash (mm)\n0,0.2\n5,0.3\n"],
    ["places close together that no inch explains", "position (mm),backlash (mm)\n0,0.2\n6,0.2\n12,0.3\n"],
    ["struck readings", "position (mm),backlash (mm),excluded\n0,12,slip\n0,0.2,\n200,0.2,\n"],
  ])("is not doubted in %s", (_, log) => {
    expect(doubts(log, TRAVEL)).toEqual([]);
  });

  test("is not doubted where nothing tells any", () => {
    expect(doubts("position,backlash\n0,12\n", TRAVEL, {})).toEqual([]);
  });
});
