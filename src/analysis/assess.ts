import { median } from "simple-statistics";
import { lengthsIn } from "../inspection/lengths.ts";
import { slideInMillimetres, surveyInMillimetres } from "../inspection/metric.ts";
import { failed, type Outcome, succeeded } from "../inspection/problem.ts";
import type { Inspection } from "../inspection/schema.ts";
import type { Assessment, ProfilePoint, Spot } from "./assessment.ts";
import { findingsOf } from "./checks/index.ts";
import { correct } from "./corrected.ts";
import { coverageOf } from "./coverage.ts";
import { chancesOf, type Extremes, endFloatLeft, marginsOf, takenUp } from "./decision.ts";
import { endFloatEstimate, endFloatOf } from "./endFloat.ts";
import { estimateOf } from "./estimate.ts";
import { nextReadingsOf } from "./nextReadings.ts";
import { positioningOf } from "./positioning.ts";
import type { ProfileDraws, ProfileModel } from "./profile/draws.ts";
import { screwProfile } from "./profile/screw.ts";
import { seededRandom } from "./random.ts";
import { type Settings, settingsOf } from "./settings.ts";
import { stationsOf } from "./stations.ts";
import { budgetOf, conformanceOf } from "./uncertainty.ts";
import { canBeSettled, decidingMargin, rule } from "./verdict.ts";
import { wornZonesOf } from "./wornZones.ts";

/** One seed for every assessment: the same readings give the same answer. */
const SEED = 20260314;

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
  const { slide } = inspection;
  const found = inspection.surveys.find((each) => each.id === surveyId);
  if (found === undefined) {
    const known = inspection.surveys.map((each) => each.id).join(", ") || "none";
    return failed("surveys", `there is no survey "${surveyId}"`, `Surveys in this inspection: ${known}.`);
  }
  const survey = surveyInMillimetres(found, slide.units);
  const metricSlide = slideInMillimetres(slide);
  const corrected = correct(survey, metricSlide.screw.lead);
  if (corrected.readings.length === 0) {
    return failed(
      `survey "${surveyId}"`,
      "there are no readings to assess",
      found.method === "positioning"
        ? "Add readings from both sides at each target, with their run; struck ones do not count."
        : "Add readings; struck ones do not count.",
    );
  }
  const lengths = lengthsIn(slide.units, corrected.resolution.step);
  const { settings, assumed } = settingsOf(metricSlide, lengths);
  if (!corrected.resolution.stated) {
    assumed.push(
      `The indicator's resolution is ${lengths.lostMotion(corrected.resolution.step)}, the graduation that all readings lie on.`,
    );
  }
  const stations = stationsOf(corrected.readings);
  const random = seededRandom(SEED);
  const profile = model(
    {
      stations,
      travel: settings.travel,
      workingRange: settings.workingRange,
      engagedLength: settings.engagedLength,
      limit: settings.limit,
      resolution: corrected.resolution.step,
      roundings: corrected.roundings,
    },
    random,
  );
  const endFloat = endFloatOf(survey.endFloat, profile, corrected.resolution.step, random);
  const drivePlay = corrected.asPairs ? (survey.drivePlay ?? 0) : 0;
  const extremes = extremesOf(profile, endFloat.draws, drivePlay);
  const margins = extremes.map((each) => marginsOf(each, settings));
  const deciding = decidingMargin(margins, settings);
  const coverage = coverageOf(stations, settings);
  const repeatability = median(profile.draws.map((draw) => draw.repeatability));
  const rounding = corrected.resolution.step * Math.sqrt(corrected.roundings / 12);
  const checks = findingsOf({ survey, corrected, stations, settings, coverage, repeatability, lengths });
  const settled = canBeSettled(deciding, repeatability, rounding);
  const ruling = rule(chancesOf(extremes, settings), settings, coverage, checks, settled);
  const points = pointsOf(profile);
  const tightSpot = least(points);
  const loosestSpot = greatest(points, settings);
  const budget = budgetOf(profile, loosestSpot, stations, corrected, survey);
  const positioning = positioningOf(survey, corrected.resolution.step, random);
  if (positioning?.correctedTo20 === false) {
    assumed.push("Positions were read at 20 °C: the survey's conditions give no temperature and expansion.");
  }
  const left = Float64Array.from(extremes, (each) => worstLeft(each, settings));
  const worst = estimateOf(profile.draws.map((draw) => draw.loose.backlash)).value;
  return succeeded({
    survey: surveyId,
    settings,
    ...ruling,
    conformance: conformanceOf(worst, budget.combined, settings.limit),
    assumed,
    uniform: estimateOf(profile.draws.map((draw) => draw.tight.backlash)),
    takeUp: estimateOf(extremes.map((each) => each.tight - settings.runningClearance)),
    uneven: estimateOf(profile.draws.map((draw) => draw.loose.backlash - draw.tight.backlash)),
    unevenChance: profile.unevenChance,
    endFloat: endFloatEstimate(endFloat),
    tightSpot,
    loosestSpot,
    afterAdjusting: { worst: estimateOf(left), position: loosestSpot.position },
    // A nut of two halves shares a rise between two windows, so no bound can be given place by place.
    wornZones:
      slide.nut?.kind === "two-halves"
        ? []
        : wornZonesOf(profile, settings.engagedLength, corrected.resolution.step),
    resolution: corrected.resolution.step,
    drivePlay,
    repeatability,
    uncertainty: { lines: budget.lines, expanded: budget.expanded },
    profile: points,
    profileAfterAdjusting: afterAdjusting(points, extremes, settings),
    nextReadings:
      ruling.verdict === "measure-more"
        ? nextReadingsOf(
            profile,
            {
              margin: deciding,
              endFloat: endFloat.draws,
              endFloatMeasured: endFloat.measured,
              noise: repeatability ** 2 + rounding ** 2,
            },
            coverage,
            settings,
            lengths,
          )
        : [],
    canBeSettled: !ruling.reasons.includes("at-the-limit"),
    checks,
    stations,
    positioning,
  });
}

function extremesOf(profile: ProfileDraws, endFloat: Float64Array, drivePlay: number): readonly Extremes[] {
  return profile.draws.map((draw, i) => ({
    worst: draw.loose.backlash - endFloat[i] - drivePlay,
    tight: draw.tight.backlash - endFloat[i] - drivePlay,
    endFloat: endFloat[i],
    drivePlay,
  }));
}

/** Lost motion that is left where it is greatest, when the nut has been taken up and the end float put right. */
function worstLeft(found: Extremes, settings: Settings): number {
  return found.worst - takenUp(found.tight, settings) + endFloatLeft(found.endFloat, settings);
}

function pointsOf(profile: ProfileDraws): readonly ProfilePoint[] {
  return Array.from(profile.positions, (position, i) => {
    const { value, low, high } = estimateOf(profile.draws.map((draw) => draw.backlash[i]));
    return { position, backlash: value, low, high };
  });
}

function least(points: readonly ProfilePoint[]): Spot {
  const { position, backlash } = points.reduce((a, b) => (b.backlash < a.backlash ? b : a));
  return { position, backlash };
}

function greatest(points: readonly ProfilePoint[], { workingRange }: Settings): Spot {
  const within = points.filter(
    ({ position }) => position >= workingRange.from && position <= workingRange.to,
  );
  const { position, backlash } = within.reduce((a, b) => (b.backlash > a.backlash ? b : a));
  return { position, backlash };
}

/** The median profile less what is taken up and what end float is corrected by. */
function afterAdjusting(
  points: readonly ProfilePoint[],
  extremes: readonly Extremes[],
  settings: Settings,
): readonly Spot[] {
  const removed = estimateOf(
    extremes.map(
      (each) =>
        takenUp(each.tight, settings) +
        each.endFloat +
        each.drivePlay -
        endFloatLeft(each.endFloat, settings),
    ),
  ).value;
  return points.map(({ position, backlash }) => ({ position, backlash: backlash - removed }));
}
