import type {
  Assessment,
  Chances,
  Conformance,
  Estimate,
  Finding,
  NextReading,
  ProfilePoint,
  Spot,
  UncertaintyLine,
  Verdict,
  WornZone,
} from "../analysis/assessment.ts";
import type { Positioning } from "../analysis/positioning/positioning.ts";
import { lengthsIn } from "../inspection/lengths.ts";
import type { Inspection } from "../inspection/schema.ts";
import { fromMillimetres, type Units } from "../inspection/units.ts";
import { cautionsOf } from "./cautions.ts";
import { alternativesOf } from "./evidence/alternatives.ts";
import { DECIMALS, finite, mapNumbers, roundedShares, throughout } from "./jsonNumbers.ts";
import { summaryOf } from "./summary.ts";

/** What the command answers with `--json`: the assessment with its words, lengths in the inspection's units. */
export interface Result {
  readonly file: string;
  readonly survey: string;
  readonly units: Units;
  readonly verdict: Verdict;
  readonly chances: Chances | null;
  readonly conformance: Conformance;
  readonly summary: string;
  readonly cautions: readonly string[];
  readonly assumed: readonly string[];
  readonly alternatives: readonly string[];
  readonly uniform: Estimate;
  readonly takeUp: Estimate;
  readonly uneven: Estimate;
  readonly greatest: Estimate;
  readonly unevenChance: number;
  readonly endFloat: Estimate | null;
  readonly tightSpot: Spot;
  readonly loosestSpot: Spot;
  readonly afterAdjusting: Assessment["afterAdjusting"];
  readonly afterNewNuts: Assessment["afterNewNuts"];
  readonly wornZones: readonly WornZone[];
  readonly repeatability: number;
  readonly uncertainty: {
    readonly lines: readonly Pick<UncertaintyLine, "source" | "standard">[];
    readonly expanded: number;
  };
  readonly profile: readonly ProfilePoint[];
  readonly nextReadings: readonly NextReading[];
  readonly canBeSettled: boolean;
  readonly checks: readonly Finding[];
  /** The quantities of ISO 230-2, where the survey holds positioning readings. */
  readonly positioning: Positioning | null;
}

/**
 * The result of one survey's assessment.
 *
 * @param file the name that the inspection was read under
 */
export function resultOf(file: string, assessment: Assessment, inspection: Inspection): Result {
  const { units } = inspection.slide;
  const length = (millimetres: number): number => finite(fromMillimetres(millimetres, units));
  const lengthsOf = <Source extends object>(source: Source): Source => mapNumbers(source, length);
  const { chances, endFloat, uncertainty, positioning } = assessment;
  return {
    file,
    survey: assessment.survey,
    units,
    verdict: assessment.verdict,
    chances: chances === null ? null : mapNumbers(roundedShares(chances, DECIMALS), finite),
    conformance: assessment.conformance,
    summary: summaryOf(assessment, lengthsIn(inspection.slide.units, assessment.resolution)),
    cautions: cautionsOf(assessment),
    assumed: assessment.assumed,
    alternatives: alternativesOf(assessment, inspection.slide),
    uniform: lengthsOf(assessment.uniform),
    takeUp: lengthsOf(assessment.takeUp),
    uneven: lengthsOf(assessment.uneven),
    greatest: lengthsOf(assessment.greatest),
    unevenChance: finite(assessment.unevenChance),
    endFloat: endFloat === null ? null : lengthsOf(endFloat),
    tightSpot: lengthsOf(assessment.tightSpot),
    loosestSpot: lengthsOf(assessment.loosestSpot),
    afterAdjusting: throughout(assessment.afterAdjusting, length),
    afterNewNuts: throughout(assessment.afterNewNuts, length),
    wornZones: assessment.wornZones.map(({ thicknessLeft, ...zone }) => ({
      ...throughout(zone, length),
      thicknessLeft: thicknessLeft === null ? null : mapNumbers(thicknessLeft, finite),
    })),
    repeatability: length(assessment.repeatability),
    uncertainty: {
      lines: uncertainty.lines.map(({ source, standard }) => ({ source, standard: length(standard) })),
      expanded: length(uncertainty.expanded),
    },
    profile: assessment.profile.map(lengthsOf),
    nextReadings: assessment.nextReadings.map(lengthsOf),
    canBeSettled: assessment.canBeSettled,
    checks: assessment.checks,
    positioning:
      positioning === undefined ? null : { ...throughout(positioning, length), runs: positioning.runs },
  };
}
