import { type Lengths, lengthsIn } from "../inspection/lengths.ts";
import { slideInMillimetres, surveyInMillimetres } from "../inspection/metric.ts";
import { failed, type Outcome, succeeded } from "../inspection/problem.ts";
import type { Inspection, Survey } from "../inspection/schema.ts";
import type { Assessment, Spot } from "./assessment.ts";
import { runChecks } from "./checks/index.ts";
import { condenseLog } from "./correct/condenseLog.ts";
import { type Corrected, correct, type LostMotion, struckReadings } from "./correct/corrections.ts";
import { type EndFloat, endFloatEstimate } from "./correct/endFloat.ts";
import { stationsOf } from "./correct/stations.ts";
import { leastCertainMargin } from "./decide/chooseVerdict.ts";
import { type Coverage, coverageOf } from "./decide/coverage.ts";
import { chancesOf, marginsOf } from "./decide/decision.ts";
import { nextReadingsOf } from "./decide/nextReadings.ts";
import {
  type DecisionResult,
  decideFromPosterior,
  type PosteriorSummary,
  summarisePosterior,
} from "./decide/posteriorSummary.ts";
import {
  fitAtStations,
  type PosteriorSample,
  type SamplingInput,
  samplePosterior,
} from "./decide/samplePosterior.ts";
import { type Settings, settingsOf } from "./decide/settings.ts";
import { type RetainedDraws, readingsKey } from "./decide/whatIf.ts";
import { wornZonesOf } from "./decide/wornZones.ts";
import { stopDecisiveOutliers, subsetsToSample } from "./outliers/decisiveOutliers.ts";
import { findOutliers } from "./outliers/findOutliers.ts";
import { positioningOf } from "./positioning/positioning.ts";
import type { ProfileDraws, ProfileModel } from "./profile/draws.ts";
import { screwProfile } from "./profile/screw.ts";
import { estimateOf } from "./statistics/estimate.ts";
import { seededRandom } from "./statistics/random.ts";

/** A separate seed, so that positioning readings do not change the verdict. */
const POSITIONING_SEED = 2302;

/** An assessment with the draws behind it, for comparing surveys. Millimetres. */
export interface AssessedSurvey {
  readonly assessment: Assessment;
  readonly survey: Survey;
  /** Whether drive play is part of each lost motion. */
  readonly asPairs: boolean;
  readonly coverage: Coverage;
  readonly profile: ProfileDraws;
  readonly endFloat: EndFloat;
}

/** An assessed survey that can be decided again with other settings. */
export interface AssessedForWhatIf extends AssessedSurvey {
  /** Computed on demand: subsets of the readings may have to be sampled first. */
  readonly retainedDraws: () => RetainedDraws;
}

/** Assesses one survey of an inspection. */
export type Assess = (inspection: Inspection, surveyId: string) => Outcome<AssessedSurvey>;

/**
 * Assesses one survey of an inspection. Fails if there is no such survey or it has no readings.
 *
 * @param model turns readings into draws of the profile; another model than the usual one serves comparison
 */
export function assessSurvey(
  inspection: Inspection,
  surveyId: string,
  model: ProfileModel = screwProfile,
): Outcome<Assessment> {
  const assessed = assessWithDraws(inspection, surveyId, model);
  return assessed.ok ? succeeded(assessed.value.assessment) : assessed;
}

/**
 * Assesses one survey and returns the draws with the assessment. The steps: correct the readings, group them into
 * stations, sample the posterior, find outliers, run the checks, decide.
 */
export function assessWithDraws(
  inspection: Inspection,
  surveyId: string,
  model: ProfileModel = screwProfile,
): Outcome<AssessedForWhatIf> {
  const input = correctSurvey(inspection, surveyId);
  if (!input.ok) return input;
  const { survey, settings, corrected, lengths } = input.value;
  const stations = stationsOf(corrected.readings);
  const sample = sampledOnce((readings) => samplePosterior(stationsOf(readings), input.value, model));
  const posterior = sample(corrected.readings);
  const { toConfirm, ...outliers } = findOutliers(posterior, corrected, settings, sample);
  const coverage = coverageOf(stations, settings);
  const fit = fitAtStations(posterior);
  const findings = runChecks({
    survey,
    corrected,
    stations,
    settings,
    coverage,
    lengths,
    ...outliers,
    ...fit,
  });
  const chances = ({ extremes }: PosteriorSample) => chancesOf(extremes, settings);
  const reviewed = { findings, stations, toConfirm };
  const checks = stopDecisiveOutliers(
    reviewed,
    chances(posterior),
    (subset) => chances(sample(subset)),
    lengths,
  );
  const summary = summarisePosterior(posterior, survey, corrected, settings, coverage);
  const decision = decideFromPosterior(summary, settings, checks);
  return succeeded({
    assessment: assessmentOf(input.value, posterior, summary, decision),
    retainedDraws: () => {
      const subsets = subsetsToSample(reviewed);
      const extremes = subsets.map((subset) => [readingsKey(subset), sample(subset).extremes] as const);
      return { ...summary, settings, ...reviewed, subsets: new Map(extremes) };
    },
    survey,
    asPairs: corrected.asPairs,
    coverage,
    profile: posterior.profile,
    endFloat: posterior.endFloat,
  });
}

/** Assesses like `assessWithDraws`, and repeats a survey only if it or the slide has changed. */
export function cachedAssess(): (inspection: Inspection, surveyId: string) => Outcome<AssessedForWhatIf> {
  const cache = new Map<string, { readonly key: string; readonly assessed: Outcome<AssessedForWhatIf> }>();
  return (inspection, surveyId) => {
    const survey = inspection.surveys.find(({ id }) => id === surveyId);
    for (const id of cache.keys()) if (inspection.surveys.every((each) => each.id !== id)) cache.delete(id);
    const key = JSON.stringify([inspection.slide, survey]);
    const cached = cache.get(surveyId);
    if (cached?.key === key) return cached.assessed;
    const assessed = assessWithDraws(inspection, surveyId);
    if (survey !== undefined) cache.set(surveyId, { key, assessed });
    return assessed;
  };
}

/** A survey with corrected readings, and the settings and assumptions to assess it by. */
interface CorrectedSurvey extends SamplingInput {
  readonly inspection: Inspection;
  readonly survey: Survey;
  readonly lengths: Lengths;
  readonly assumed: readonly string[];
}

function correctSurvey(inspection: Inspection, surveyId: string): Outcome<CorrectedSurvey> {
  const found = inspection.surveys.find((each) => each.id === surveyId);
  if (found === undefined) {
    const known = inspection.surveys.map((each) => each.id).join(", ") || "none";
    return failed("surveys", `there is no survey "${surveyId}"`, `Surveys in this inspection: ${known}.`);
  }
  const survey = surveyInMillimetres(found, inspection.slide.units);
  const slide = slideInMillimetres(inspection.slide);
  const allReadings = correct(survey, slide.screw.lead);
  if (allReadings.readings.length === 0) {
    return failed(
      `survey "${surveyId}"`,
      "there are no readings to assess",
      found.method === "positioning"
        ? "Add readings from both sides at each target, with their run; struck ones do not count."
        : "Add readings; struck ones do not count.",
    );
  }
  const lengths = lengthsIn(inspection.slide.units, allReadings.resolution.step);
  const { settings, assumed } = settingsOf(slide, lengths);
  const corrected = condenseLog(allReadings, settings);
  const condensed =
    corrected === allReadings
      ? []
      : [
          `The ${allReadings.readings.length} readings of the log count as ${corrected.readings.length}, one for each short stretch: neighbouring readings of a log are not independent.`,
        ];
  return succeeded({
    inspection,
    survey,
    lengths,
    settings,
    corrected,
    endFloat: survey.endFloat,
    drivePlay: corrected.asPairs ? (survey.drivePlay ?? 0) : 0,
    assumed: [...assumed, ...assumedResolution(corrected, lengths), ...condensed],
  });
}

function assumedResolution({ resolution }: Corrected, lengths: Lengths): readonly string[] {
  if (resolution.stated) return [];
  return [
    `The indicator's resolution is ${lengths.lostMotion(resolution.step)}, the graduation that all readings lie on.`,
  ];
}

function assessmentOf(
  input: CorrectedSurvey,
  posterior: PosteriorSample,
  summary: PosteriorSummary,
  decision: DecisionResult,
): Assessment {
  const { inspection, survey, settings, corrected, drivePlay, assumed } = input;
  const { profile, endFloat, stations, repeatability } = posterior;
  const resolution = corrected.resolution.step;
  const positioning = positioningOf(survey, resolution, seededRandom(POSITIONING_SEED));
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
    greatest: summary.greatest,
    unevenChance: profile.unevenChance,
    endFloat: endFloatEstimate(endFloat),
    tightSpot: tightSpotOf(summary),
    loosestSpot: summary.loosestSpot,
    // A nut of two halves shares a rise between two windows, so there is no bound for a single place.
    wornZones:
      inspection.slide.nut?.kind === "two-halves"
        ? []
        : wornZonesOf(profile, settings.engagedLength, resolution, threadThickness(inspection, settings)),
    resolution,
    drivePlay,
    repeatability,
    uncertainty: { lines: summary.budget.lines, expanded: summary.budget.expanded },
    profile: summary.profile,
    nextReadings: nextReadingsFor(input, posterior, summary, decision),
    stations,
    struck: struckReadings(survey, settings.lead),
    positioning,
  };
}

/** No readings where the verdict is given, or further readings cannot be expected to settle it. */
function nextReadingsFor(
  { settings, lengths }: CorrectedSurvey,
  { profile, endFloat, extremes, repeatability }: PosteriorSample,
  { coverage, rounding }: PosteriorSummary,
  { verdict, reasons }: DecisionResult,
): Assessment["nextReadings"] {
  if (verdict !== "measure-more" || reasons.includes("at-the-limit")) return [];
  const margins = extremes.map((each) => marginsOf(each, settings));
  const question = {
    margin: leastCertainMargin(margins, settings),
    endFloat: endFloat.draws,
    endFloatMeasured: endFloat.measured,
    endFloatNeeded: reasons.includes("end-float-unmeasured"),
    noise: repeatability ** 2 + rounding ** 2,
  };
  return nextReadingsOf(profile, question, coverage, settings, lengths);
}

function tightSpotOf({ profile }: PosteriorSummary): Spot {
  const { position, backlash } = profile.reduce((a, b) => (b.backlash < a.backlash ? b : a));
  return { position, backlash };
}

/** At the pitch line, in millimetres: half the pitch in every form whose thread is as thick as its groove is wide. */
function threadThickness({ slide }: Inspection, { pitch }: Settings): number | undefined {
  return slide.screw.form === undefined ? undefined : pitch / 2;
}

/** Samples each set of readings once: the sampler with a cache. */
function sampledOnce(
  sample: (readings: readonly LostMotion[]) => PosteriorSample,
): (readings: readonly LostMotion[]) => PosteriorSample {
  const cache = new Map<string, PosteriorSample>();
  return (readings) => {
    const key = readingsKey(readings);
    const posterior = cache.get(key) ?? sample(readings);
    cache.set(key, posterior);
    return posterior;
  };
}
