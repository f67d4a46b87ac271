import { type Lengths, lengthsIn } from "../inspection/lengths.ts";
import { slideInMillimetres, surveyInMillimetres } from "../inspection/metric.ts";
import { failed, type Outcome, succeeded } from "../inspection/problem.ts";
import type { Inspection, Survey } from "../inspection/schema.ts";
import type { Assessment, Finding, ProfilePoint, Spot } from "./assessment.ts";
import { findingsOf } from "./checks/index.ts";
import { condenseLog } from "./correct/condenseLog.ts";
import { type Corrected, correct, type LostMotion } from "./correct/corrections.ts";
import { type EndFloat, endFloatEstimate } from "./correct/endFloat.ts";
import { struckReadings } from "./correct/struckReadings.ts";
import { decidingMargin } from "./decide/chooseVerdict.ts";
import { type Coverage, coverageOf } from "./decide/coverage.ts";
import { nextReadingsOf } from "./decide/nextReadings.ts";
import {
  type DecisionResult,
  decideFromPosterior,
  type PosteriorSummary,
} from "./decide/posteriorSummary.ts";
import {
  checkInputOf,
  type PosteriorSample,
  type SamplingInput,
  samplePosterior,
} from "./decide/samplePosterior.ts";
import { type Settings, settingsOf } from "./decide/settings.ts";
import { budgetOf } from "./decide/uncertainty.ts";
import { keyOf, type RetainedDraws } from "./decide/whatIf.ts";
import { wornZonesOf } from "./decide/wornZones.ts";
import { partsToJudge, withStops } from "./outliers/decisiveOutliers.ts";
import { findOutliers } from "./outliers/singleReadingOutliers.ts";
import { positioningOf } from "./positioning.ts";
import type { ProfileDraws, ProfileModel } from "./profile/draws.ts";
import { screwProfile } from "./profile/screw.ts";
import { estimateOf, estimatesAlong } from "./statistics/estimate.ts";
import { seededRandom } from "./statistics/random.ts";

/** A seed of its own, so that what positions say does not move the verdict. */
const POSITIONING_SEED = 2302;

/** A survey ready to be judged, with what is said about it. */
interface Prepared extends SamplingInput {
  readonly inspection: Inspection;
  readonly survey: Survey;
  readonly lengths: Lengths;
  readonly assumed: readonly string[];
}

/** An assessment with what it was made from, for what is worked out of several surveys. Millimetres. */
export interface AssessedSurvey {
  readonly assessment: Assessment;
  readonly survey: Survey;
  /** Whether drive play is part of each lost motion. */
  readonly asPairs: boolean;
  readonly coverage: Coverage;
  readonly profile: ProfileDraws;
  readonly endFloat: EndFloat;
}

/** The same, from which to decide anew at other settings. */
export interface Redecidable extends AssessedSurvey {
  /** Worked out when it is asked for: some of the readings may have to be judged by themselves. */
  readonly keptDraws: () => RetainedDraws;
}

/**
 * The assessment of one survey of an inspection: readings → corrected stations → draws of the profile → decision.
 * Fails where there is no such survey or where it holds no readings.
 *
 * @param model how readings become draws of the profile; another than the usual one serves comparison
 */
export function assessSurvey(
  inspection: Inspection,
  surveyId: string,
  model: ProfileModel = screwProfile,
): Outcome<Assessment> {
  const assessed = assessWithDraws(inspection, surveyId, model);
  return assessed.ok ? succeeded(assessed.value.assessment) : assessed;
}

/** The same with the draws that it rests on. */
export function assessWithDraws(
  inspection: Inspection,
  surveyId: string,
  model: ProfileModel = screwProfile,
): Outcome<Redecidable> {
  const prepared = prepare(inspection, surveyId);
  if (!prepared.ok) return prepared;
  const { settings, corrected, lengths, survey } = prepared.value;
  const judged = remembering((readings) => samplePosterior(readings, prepared.value, model));
  const judgement = judged(corrected.readings);
  const coverage = coverageOf(judgement.stations, settings);
  const { toConfirm: lone, ...doubts } = findOutliers(judgement, corrected, settings, judged);
  const seen = { ...checkInputOf(judgement), ...doubts, survey, corrected, settings, coverage, lengths };
  const findings = findingsOf(seen);
  const checks = withStops(findings, judgement, lone, lengths, judged);
  const grounds = groundsOf(prepared.value, judgement, coverage);
  return succeeded({
    assessment: assessmentOf(prepared.value, judgement, grounds, checks),
    keptDraws: () => {
      const parts = partsToJudge(findings, judgement.stations, lone);
      const judgedParts = new Map(parts.map((part) => [keyOf(part), judged(part).extremes]));
      return { ...grounds, settings, findings, stations: judgement.stations, lone, parts: judgedParts };
    },
    survey,
    asPairs: corrected.asPairs,
    coverage,
    profile: judgement.profile,
    endFloat: judgement.endFloat,
  });
}

function prepare(inspection: Inspection, surveyId: string): Outcome<Prepared> {
  const found = inspection.surveys.find((each) => each.id === surveyId);
  if (found === undefined) {
    const known = inspection.surveys.map((each) => each.id).join(", ") || "none";
    return failed("surveys", `there is no survey "${surveyId}"`, `Surveys in this inspection: ${known}.`);
  }
  const survey = surveyInMillimetres(found, inspection.slide.units);
  const slide = slideInMillimetres(inspection.slide);
  const asRead = correct(survey, slide.screw.lead);
  if (asRead.readings.length === 0) {
    return failed(
      `survey "${surveyId}"`,
      "there are no readings to assess",
      found.method === "positioning"
        ? "Add readings from both sides at each target, with their run; struck ones do not count."
        : "Add readings; struck ones do not count.",
    );
  }
  const lengths = lengthsIn(inspection.slide.units, asRead.resolution.step);
  const { settings, assumed } = settingsOf(slide, lengths);
  const corrected = condenseLog(asRead, settings);
  return succeeded({
    inspection,
    survey,
    lengths,
    settings,
    corrected,
    endFloat: survey.endFloat,
    drivePlay: corrected.asPairs ? (survey.drivePlay ?? 0) : 0,
    assumed: [
      ...assumed,
      ...assumedOfResolution(corrected, lengths),
      ...(corrected === asRead
        ? []
        : [
            `The ${asRead.readings.length} readings of the log count as ${corrected.readings.length}, one for each short stretch: neighbouring readings of a log are not independent.`,
          ]),
    ],
  });
}

function assumedOfResolution({ resolution }: Corrected, lengths: Lengths): readonly string[] {
  if (resolution.stated) return [];
  return [
    `The indicator's resolution is ${lengths.lostMotion(resolution.step)}, the graduation that all readings lie on.`,
  ];
}

function groundsOf(
  { survey, settings, corrected }: Prepared,
  judgement: PosteriorSample,
  coverage: Coverage,
): PosteriorSummary {
  const { profile, extremes, endFloat, stations, repeatability } = judgement;
  const points = pointsOf(profile);
  const most = estimateOf(profile.draws.map((draw) => draw.loose.backlash));
  // Peaks between stations and a wobble stand above the middle of the curve: the spot is told by the same figure as they.
  const loosestSpot = { position: highest(points, settings), backlash: most.value };
  return {
    extremes,
    endFloat: { measured: endFloat.measured },
    coverage,
    repeatability,
    rounding: corrected.resolution.step * Math.sqrt(corrected.roundings / 12),
    budget: budgetOf(profile, loosestSpot, stations, corrected, survey),
    greatest: most,
    profile: points,
    loosestSpot,
  };
}

function assessmentOf(
  { inspection, survey, settings, corrected, drivePlay, lengths, assumed }: Prepared,
  judgement: PosteriorSample,
  grounds: PosteriorSummary,
  checks: readonly Finding[],
): Assessment {
  const { profile, endFloat, stations, repeatability } = judgement;
  const { budget, coverage } = grounds;
  const resolution = corrected.resolution.step;
  const decision = decideFromPosterior(grounds, settings, checks);
  const positioning = positioningOf(survey, resolution, seededRandom(POSITIONING_SEED));
  const question = {
    margin: decidingMargin(judgement.margins, settings),
    endFloat: endFloat.draws,
    endFloatMeasured: endFloat.measured,
    endFloatNeeded: decision.reasons.includes("end-float-unmeasured"),
    noise: repeatability ** 2 + grounds.rounding ** 2,
  };
  return {
    survey: survey.id,
    ...decision,
    assumed:
      positioning?.correctedTo20 === false
        ? [
            ...assumed,
            "Positions were read at 20 °C: the survey's conditions give no temperature and expansion.",
          ]
        : assumed,
    uniform: estimateOf(profile.draws.map((draw) => draw.tight.backlash)),
    uneven: estimateOf(profile.draws.map((draw) => draw.loose.backlash - draw.tight.backlash)),
    greatest: grounds.greatest,
    unevenChance: profile.unevenChance,
    endFloat: endFloatEstimate(endFloat),
    tightSpot: least(grounds.profile),
    loosestSpot: grounds.loosestSpot,
    // A nut of two halves shares a rise between two windows, so no bound can be given place by place.
    wornZones:
      inspection.slide.nut?.kind === "two-halves"
        ? []
        : wornZonesOf(profile, settings.engagedLength, resolution, threadThickness(inspection, settings)),
    resolution,
    drivePlay,
    repeatability,
    uncertainty: { lines: budget.lines, expanded: budget.expanded },
    profile: grounds.profile,
    nextReadings: asksForMore(decision) ? nextReadingsOf(profile, question, coverage, settings, lengths) : [],
    stations,
    struck: struckReadings(survey, settings.lead),
    positioning,
  };
}

/** At the pitch line, in millimetres: half the pitch in every form that is as thick as it is wide. */
function threadThickness({ slide }: Inspection, { pitch }: Settings): number | undefined {
  return slide.screw.form === undefined ? undefined : pitch / 2;
}

/** The same, with what was judged before taken from memory. */
function remembering(
  judged: (readings: readonly LostMotion[]) => PosteriorSample,
): (readings: readonly LostMotion[]) => PosteriorSample {
  const known = new Map<string, PosteriorSample>();
  return (readings) => {
    const key = keyOf(readings);
    const judgement = known.get(key) ?? judged(readings);
    known.set(key, judgement);
    return judgement;
  };
}

function asksForMore({ verdict, reasons }: DecisionResult): boolean {
  return verdict === "measure-more" && !reasons.includes("at-the-limit");
}

function pointsOf(profile: ProfileDraws): readonly ProfilePoint[] {
  const { positions, draws } = profile;
  const curves = draws.map(({ backlash }) => backlash);
  return estimatesAlong(curves, positions.length).map(({ value, low, high }, i) => ({
    position: positions[i],
    backlash: value,
    low,
    high,
  }));
}

function least(points: readonly ProfilePoint[]): Spot {
  const { position, backlash } = points.reduce((a, b) => (b.backlash < a.backlash ? b : a));
  return { position, backlash };
}

/** The position of the highest point in the working range. */
function highest(points: readonly ProfilePoint[], { workingRange }: Settings): number {
  const within = points.filter(
    ({ position }) => position >= workingRange.from && position <= workingRange.to,
  );
  return within.reduce((a, b) => (b.backlash > a.backlash ? b : a)).position;
}
