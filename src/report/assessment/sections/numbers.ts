import type { Assessment, Spot } from "../../../analysis/assessment.ts";
import type { Lengths } from "../../../inspection/lengths.ts";
import { evennessOf } from "../../../picture/evenness.ts";
import { type Fact, facts } from "../../document/facts.ts";
import { numberRows } from "../../numberRows.ts";
import type { SectionMaker } from "../reported.ts";

/** The numbers that the verdict rests on, each with its interval, and the places that they belong to. */
export const numbers: SectionMaker = ({ assessment, lengths }) => ({
  title: "The numbers",
  as: "whole",
  content: facts([...numberRows(assessment, lengths), ...spots(assessment, lengths), ...unworn(assessment)]),
});

function spots(assessment: Assessment, lengths: Lengths): readonly Fact[] {
  if (evennessOf(assessment, lengths) !== "uneven") {
    return [
      [
        "Tight and loosest spot",
        "not told: the readings do not show that lost motion differs along the travel",
      ],
    ];
  }
  const words = ({ position, backlash }: Spot): string =>
    `${lengths.lostMotion(backlash)} at about ${lengths.spot(position)}`;
  return [
    ["Tight spot", words(assessment.tightSpot)],
    ["Loosest spot", words(assessment.loosestSpot)],
  ];
}

function unworn({ wornZones }: Assessment): readonly Fact[] {
  return wornZones.length === 0 ? [["Screw worn", "nowhere that these readings show"]] : [];
}
