import { lengthsIn } from "../../inspection/lengths.ts";
import { capitalised, conformanceWords } from "../words.ts";
import type { EvidencePart } from "./evidence.ts";

/** The parts of an uncertainty are smaller than the readings' resolution, in millimetres. */
const FINE = 0.001;

/** The uncertainty budget line by line after the GUM, and conformance with the limit after ISO 14253-1. */
export const uncertainty: EvidencePart = ({ assessment, slide, lengths }) => {
  const { lines, expanded } = assessment.uncertainty;
  const { settings, conformance, greatest } = assessment;
  const { lostMotion } = lengthsIn(slide.units, FINE);
  const rows = lines.map(({ source, standard, stated }) => ({
    cells: [capitalised(source), stated ? lostMotion(standard) : "not stated"],
  }));
  const limit = `the limit of ${lengths.position(settings.limit)}`;
  return {
    title: "Uncertainty, and the limit",
    blocks: [
      {
        kind: "table",
        caption: "Of lost motion at the loosest spot, after the GUM (JCGM 100).",
        columns: [
          { name: "Source", holds: "words" },
          { name: "Standard uncertainty u", holds: "figures" },
        ],
        rows: [...rows, { cells: ["Expanded, U = 2 u", lostMotion(expanded)], as: "total" }],
      },
      {
        kind: "paragraph",
        text: `Lost motion of ${lengths.lostMotion(greatest.value)} is ${conformanceWords(conformance, limit)}, after ISO 14253-1 at 95 %, one-sided, with a guard band of 1.65 u.`,
      },
    ],
  };
};
