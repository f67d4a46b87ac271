import type { Assessment, Spot } from "../../analysis/assessment.ts";
import type { Interval } from "../../analysis/decide/settings.ts";
import { type Lengths, lengthsIn } from "../../inspection/lengths.ts";
import type { Slide } from "../../inspection/schema.ts";
import { sentenceList } from "../blocks.ts";
import type { EvidencePart } from "./evidence.ts";

/** A screw can be recut where its deepest wear is within this share of the thread's thickness, half the pitch. */
const RECUT_SHARE = 0.1;
/** Limiting the travel is worth naming where at least this share of it stays usable. */
const USABLE_SHARE = 0.5;

/** What could be done instead of remaking the screw. */
export const alternatives: EvidencePart = ({ assessment, slide }) => {
  const sentences = alternativesOf(assessment, slide);
  return sentences.length === 0
    ? null
    : { title: "What else could be done", blocks: [sentenceList(sentences)] };
};

type Alternative = (assessment: Assessment, slide: Slide, lengths: Lengths) => string | null;

const ALTERNATIVES: readonly Alternative[] = [recut, turnEndForEnd, limitTravel];

/** The alternatives that hold for this slide, a sentence each; none where the verdict is another. */
export function alternativesOf(assessment: Assessment, slide: Slide): readonly string[] {
  if (assessment.verdict !== "remake-screw") return [];
  const lengths = lengthsIn(slide.units);
  return ALTERNATIVES.flatMap((alternative) => alternative(assessment, slide, lengths) ?? []);
}

/** Ruled out where the wear that shows already exceeds what recutting may remove. */
function recut({ settings, wornZones }: Assessment, _slide: Slide, lengths: Lengths): string | null {
  const allowed = (RECUT_SHARE * settings.pitch) / 2;
  if (wornZones.some(({ deepest }) => deepest.low > allowed)) return null;
  return `Recut the screw to an even thread, with nuts to suit, if its deepest wear, measured on the thread itself, is no more than ${lengths.position(allowed)}, a tenth of the thread's thickness.`;
}

/** Helps where the worn thread then lies outside the working range. The travel's middle stands for the screw's. */
function turnEndForEnd({ settings, wornZones }: Assessment, _slide: Slide, lengths: Lengths): string | null {
  const { travel, workingRange } = settings;
  const turned = wornZones.map(({ from, to }) => ({
    from: travel.from + travel.to - to,
    to: travel.from + travel.to - from,
  }));
  const clears = turned.length > 0 && turned.every((zone) => !overlaps(zone, workingRange));
  if (!clears) return null;
  const places = turned
    .map(({ from, to }) => `from about ${lengths.spot(from)} to ${lengths.spot(to)}`)
    .join(" and ");
  return `Turn the screw end for end, where its ends allow; its worn part then lies ${places}, outside the working range. Read again afterwards.`;
}

/** Only where no working range was stated: one that was stated is needed. */
function limitTravel(assessment: Assessment, slide: Slide, lengths: Lengths): string | null {
  if (slide.workingRange !== undefined) return null;
  const { settings, profileAfterAdjusting } = assessment;
  const usable = longestWithin(profileAfterAdjusting, settings.limit);
  const length = settings.travel.to - settings.travel.from;
  if (usable === null || usable.to - usable.from < USABLE_SHARE * length) return null;
  const nut = settings.adjustable ? "with the nut adjusted" : "with new nuts on this screw";
  return `Limit the travel with stops, if the work needs no more than from about ${lengths.spot(usable.from)} to ${lengths.spot(usable.to)}: ${nut}, lost motion stays within the limit there.`;
}

/** The longest interval over which the points stay within the limit. */
function longestWithin(points: readonly Spot[], limit: number): Interval | null {
  let longest: Interval | null = null;
  let from: number | null = null;
  for (const { position, backlash } of points) {
    if (backlash > limit) {
      from = null;
      continue;
    }
    from ??= position;
    if (longest === null || position - from > longest.to - longest.from) longest = { from, to: position };
  }
  return longest;
}

function overlaps(one: Interval, other: Interval): boolean {
  return one.from < other.to && other.from < one.to;
}
