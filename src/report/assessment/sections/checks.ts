import type { Finding, Severity } from "../../../analysis/assessment.ts";
import { SAME_PLACE } from "../../../analysis/correct/samePlace.ts";
import { isPositioning } from "../../../inspection/readingShapes.ts";
import type { Reading } from "../../../inspection/schema.ts";
import { toMillimetres } from "../../../inspection/units.ts";
import { lines } from "../../document/lines.ts";
import { table } from "../../document/table.ts";
import { html, type Markup } from "../../markup.ts";
import { capitalised } from "../../words.ts";
import type { Reported, SectionMaker } from "../reported.ts";

const LOOKED_FOR =
  "The readings were looked through for slips of the decimal point and of the unit, readings that stray from their repeats or from the profile, negative lost motion, readings outside the travel, rows entered twice, drift with the order of reading, scatter that grows along the travel, gaps, missing repeats, stations in step with the lead, readings on too few graduations, and end float or drive play that does not fit. No reading was left out or changed but by being struck, with its reason.";

/** How each kind of finding stands in the end: nothing is settled but by reading again or by striking. */
const STANDING: Readonly<Record<Severity, string>> = {
  stop: "Open: it stops the verdict until it is cleared up.",
  warning: "Open: every reading still counts. To be weighed with the verdict.",
  note: "For information: nothing was changed for it.",
};

/** What the checks found and how it stands, and how struck readings were made good. */
export const checks: SectionMaker = (reported) => ({
  title: "Checks on the readings",
  content: [html`<p>${LOOKED_FOR}</p>`, findings(reported.assessment.checks), struck(reported)],
});

function findings(found: readonly Finding[]): Markup {
  if (found.length === 0) return html`<p><strong>Nothing was found.</strong></p>`;
  const columns = ["Check", "What was found", "How it stands"].map((name) => ({
    name,
    holds: "words" as const,
  }));
  return table(
    columns,
    found.map(({ check, message, severity }) => ({
      cells: [capitalised(check), message, STANDING[severity]],
    })),
  );
}

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
