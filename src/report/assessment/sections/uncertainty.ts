import { table } from "../../document/table.ts";
import { html } from "../../markup.ts";
import { uncertaintyWords } from "../../uncertaintyWords.ts";
import { capitalised } from "../../words.ts";
import type { SectionMaker } from "../reported.ts";

/** The budget of uncertainty, line by line, and what it says of the limit. */
export const uncertainty: SectionMaker = ({ assessment, slide, lengths }) => {
  const { lines, expanded } = uncertaintyWords(assessment, slide.units);
  const { settings, conformance, greatest } = assessment;
  return {
    title: "Uncertainty, and the limit",
    as: "whole",
    content: [
      table(
        [
          { name: "Source", holds: "words" },
          { name: "Standard uncertainty u", holds: "figures" },
        ],
        [
          ...lines.map(([source, words]) => ({ cells: [capitalised(source), words] })),
          { cells: ["Expanded, U = 2 u", expanded], as: "total" },
        ],
        "Of lost motion at the loosest spot, after the GUM (JCGM 100).",
      ),
      html`<p>Lost motion of ${lengths.lostMotion(greatest.value)} against a limit of ${lengths.position(settings.limit)}: that the limit is kept is <strong>${conformance}</strong>, after ISO 14253-1 at 95 %, one-sided, with a guard band of 1.65 u.</p>`,
    ],
  };
};
