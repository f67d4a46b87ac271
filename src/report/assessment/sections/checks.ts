import { SAME_PLACE } from "../../../analysis/correct/samePlace.ts";
import { isPositioning } from "../../../inspection/readingShapes.ts";
import type { Reading } from "../../../inspection/schema.ts";
import { toMillimetres } from "../../../inspection/units.ts";
import { blockMarkup, lines } from "../../document/pieces.ts";
import { checks as findings } from "../../evidence/checks.ts";
import { html, type Markup } from "../../markup.ts";
import type { Reported, SectionMaker } from "../reported.ts";

const LOOKED_FOR =
  "The readings were looked through for slips of the decimal point and of the unit, readings that stray from their repeats or from the profile, negative lost motion, readings outside the travel, rows entered twice, drift with the order of reading, scatter that grows along the travel, gaps, missing repeats, stations in step with the lead, readings on too few graduations, and end float or drive play that does not fit. No reading was left out or changed unless it was struck, with its reason.";

const WEIGHT =
  "What stops the verdict is open until it is cleared up. A warning is open, and every reading still counts: weigh it with the verdict. A note is for information: nothing was changed for it.";

/** What the checks found, and which readings count in place of struck ones. */
export const checks: SectionMaker = (reported) => {
  const found = findings(reported);
  return {
    title: "Checks on the readings",
    content: [
      html`<p>${LOOKED_FOR}</p>`,
      ...(found === null
        ? [html`<p><strong>Nothing was found.</strong></p>`]
        : [...found.blocks.map(blockMarkup), html`<p>${WEIGHT}</p>`]),
      struck(reported),
    ],
  };
};

function struck({ survey, slide, lengths }: Reported): Markup {
  const sentences = survey.readings.flatMap((reading, index) => {
    if (reading.excluded === undefined) return [];
    const at = toMillimetres(placeOf(reading), slide.units);
    const others = survey.readings.filter(
      (other) =>
        other.excluded === undefined &&
        Math.abs(toMillimetres(placeOf(other), slide.units) - at) <= SAME_PLACE,
    ).length;
    const reason = reading.excluded.trim() === "" ? "no reason given" : reading.excluded.trim();
    return [
      `Reading ${index + 1} at ${lengths.position(at)} was struck: ${reason}${/[.!?]$/.test(reason) ? "" : "."} ${instead(others)}`,
    ];
  });
  return sentences.length === 0 ? html`` : html`<h3>Struck readings</h3>${lines(sentences)}`;
}

function instead(others: number): string {
  if (others === 0) return "No other reading of this station counts in its place.";
  return `${others === 1 ? "One other reading" : `${others} other readings`} of this station ${others === 1 ? "counts" : "count"} in its place.`;
}

function placeOf(reading: Reading): number {
  return isPositioning(reading) ? reading.target : reading.position;
}
