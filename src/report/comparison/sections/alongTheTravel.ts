import { table } from "../../document/pieces.ts";
import { html } from "../../markup.ts";
import { capitalised } from "../../words.ts";
import { ALONG_HEADINGS, alongTheTravelRows } from "../alongTheTravel.ts";
import type { ComparisonSectionMaker } from "../reportedComparison.ts";

/** Both profiles and their difference in figures, at even steps. */
export const alongTheTravel: ComparisonSectionMaker = ({ comparison, lengths }) => ({
  title: `Along the travel (${lengths.units})`,
  as: "whole",
  content: html`<div class="compact">${table(
    ALONG_HEADINGS.map((name) => ({ name: capitalised(name), holds: "figures" })),
    alongTheTravelRows(comparison, lengths).map((cells) => ({ cells })),
  )}</div>`,
});
