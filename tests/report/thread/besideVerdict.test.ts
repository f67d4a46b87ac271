import { describe, expect, it } from "vitest";
import { lengthsIn } from "../../../src/inspection/lengths.ts";
import { besideVerdict } from "../../../src/report/thread/besideVerdict.ts";
import { threadWear } from "../../../src/thread/measure/wear.ts";
import { EVEN, exampleAssessment } from "../exampleAssessment.ts";

/** The example's screw has a pitch of 4 mm, and is worn from 75 to 145 mm by 0.20 mm, give or take 0.02. */
const worn = (thickness: number, position = 110) =>
  threadWear(4, [
    { position: 0, thickness: 2 },
    { position, thickness },
  ]);

const standOf = (changes: Parameters<typeof exampleAssessment>[0], wear: ReturnType<typeof worn>): string =>
  besideVerdict(exampleAssessment(changes), wear, lengthsIn("mm")).stand;

describe("what was measured on the thread, beside the verdict", () => {
  it.each([
    ["agrees with a screw to be remade that has worn as much", {}, worn(1.8), "agrees"],
    ["disagrees where the thread is whole in a worn stretch", {}, worn(1.98), "disagrees"],
    ["tells nothing yet where no place lies in one", {}, worn(1.98, 250), "adds"],
    [
      "stands against a nut to be adjusted where too little thread is left",
      { ...EVEN, verdict: "adjust-nut" },
      worn(1.4),
      "disagrees",
    ],
    ["adds wear that lost motion does not show", { ...EVEN, verdict: "adjust-nut" }, worn(1.9), "adds"],
    ["agrees where there is none", { ...EVEN, verdict: "adjust-nut" }, worn(1.99), "agrees"],
    ["is about safety first where hardly any is left", { ...EVEN, verdict: "adjust-nut" }, worn(0.6), "adds"],
  ] as const)("%s", (_, changes, wear, stand) => {
    expect(standOf(changes, wear)).toBe(stand);
  });
});
