import type { ComparedSurvey } from "../../analysis/comparison/comparison.ts";
import { sentenceList } from "../blocks.ts";
import { cautionsOf } from "../cautions.ts";
import { partLines, sectionsText, wrapped } from "../plainText.ts";
import type { Compared } from "./compared.ts";
import { COMPARISON_PARTS } from "./parts.ts";
import { acceptanceChance, comparisonSummary } from "./summary.ts";

const WIDTH = 80;

/**
 * The comparison of two surveys as text for a terminal, and the trend where there is one.
 *
 * @param file the name that the inspection was read under
 */
export function comparisonText(file: string, compared: Compared): string {
  const { comparison, inspection, lengths } = compared;
  const { from, to } = comparison;
  const summary = `${comparisonSummary(comparison, lengths)} ${acceptanceChance(comparison)}`;
  const cautions = { title: "Cautions", blocks: [sentenceList(cautionsOf(to.assessment))] };
  return sectionsText([
    [`${inspection.slide.name} (${file})`, ...wrapped(`${nameOf(from)} against ${nameOf(to)}`, WIDTH)],
    ["BEFORE AND AFTER", ...wrapped(summary, WIDTH)],
    partLines(cautions, WIDTH),
    ...Object.values(COMPARISON_PARTS).map((make) => partLines(make(compared), WIDTH)),
  ]);
}

function nameOf({ id, taken, stage }: ComparedSurvey): string {
  return `"${id}" (${taken.slice(0, 10)}, ${stage.replaceAll("-", " ")})`;
}
