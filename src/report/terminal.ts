import type { Assessment } from "../analysis/assessment.ts";
import { lengthsIn } from "../inspection/lengths.ts";
import type { Inspection } from "../inspection/schema.ts";
import { profilePicture } from "../picture/profilePicture.ts";
import { profileText } from "../picture/profileText.ts";
import { sentenceList } from "./blocks.ts";
import { cautionsOf } from "./cautions.ts";
import { EVIDENCE } from "./evidence/index.ts";
import { partLines, sectionsText, wrapped } from "./plainText.ts";
import { summaryOf, verdictTitle } from "./summary.ts";

const WIDTH = 80;

/**
 * The assessment of one survey as text for a terminal, the verdict first.
 *
 * @param file the name that the inspection was read under
 */
export function terminalText(file: string, assessment: Assessment, { slide }: Inspection): string {
  const lengths = lengthsIn(slide.units, assessment.resolution);
  const cautions = { title: "Cautions", blocks: [sentenceList(cautionsOf(assessment))] };
  return sectionsText([
    [`${slide.name}, survey "${assessment.survey}" (${file})`],
    [verdictTitle(assessment).toUpperCase(), ...wrapped(summaryOf(assessment, lengths), WIDTH)],
    profileText(profilePicture(assessment, slide.units), WIDTH),
    partLines(cautions, WIDTH),
    ...EVIDENCE.map((make) => partLines(make({ assessment, slide, lengths }), WIDTH)),
  ]);
}
