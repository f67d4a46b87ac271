import type { Assessment } from "../analysis/assessment.ts";
import { lengthsIn } from "../inspection/lengths.ts";
import type { Slide } from "../inspection/schema.ts";

/** How the screw is drawn. */
interface Drawn {
  readonly exaggeration: number;
  readonly standsFor: number;
  /** In millimetres. */
  readonly nutAt: number | undefined;
}

/** The picture of a screw in words, for those who cannot see it. */
export function describeScrew(assessment: Assessment, slide: Slide, drawn: Drawn): string {
  const lengths = lengthsIn(slide.units, assessment.resolution);
  const { travel, engagedLength } = assessment.settings;
  const { wornZones } = assessment;
  const { exaggeration, standsFor, nutAt } = drawn;
  const sentences = [
    `The screw from the side, over the travel from ${lengths.position(travel.from)} to ${lengths.position(travel.to)} and half the nut's length beyond`,
    ...(wornZones.length === 0
      ? [unwornWords(slide)]
      : wornZones.map(
          ({ from, to, atLeast }) =>
            `Worn by at least ${lengths.lostMotion(atLeast)}, both flanks together, from about ${lengths.spot(from)} to ${lengths.spot(to)}`,
        )),
    ...(wornZones.length === 0 || exaggeration === 1
      ? []
      : [`Wear is drawn ${exaggeration} times as large as it is, half of it on either flank`]),
    ...(standsFor === 1 ? [] : [`Each thread drawn stands for ${standsFor}`]),
    ...(nutAt === undefined
      ? []
      : [`The nut, ${lengths.position(engagedLength)} long, is drawn at about ${lengths.spot(nutAt)}`]),
  ];
  return `${sentences.join(". ")}.`;
}

function unwornWords({ nut }: Slide): string {
  return nut?.kind === "two-halves"
    ? "Each half of the nut bears on a flank of its own, so where the screw has worn cannot be told place by place"
    : "The readings show no wear of the screw in one place more than in another";
}
