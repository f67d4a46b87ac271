import { mean } from "simple-statistics";
import { assessSurvey } from "../../src/analysis/assess.ts";
import { correct } from "../../src/analysis/correct/corrections.ts";
import { stationsOf } from "../../src/analysis/correct/stations.ts";
import { decide } from "../../src/analysis/decide/decision.ts";
import { settingsOf } from "../../src/analysis/decide/settings.ts";
import type { ProfileModel } from "../../src/analysis/profile/draws.ts";
import { lengthsIn } from "../../src/inspection/lengths.ts";
import { inMillimetres, slideInMillimetres } from "../../src/inspection/metric.ts";
import type { SimulatedSlide } from "../simulator/simulatedSlide.ts";
import type { Judgement } from "./score.ts";

/** A spreadsheet's way: the largest and the smallest mean reading are taken for the truth. */
export function bySpreadsheet({ inspection }: SimulatedSlide): Judgement {
  const { slide, surveys } = inMillimetres(inspection);
  const [survey] = surveys;
  const { readings, asPairs } = correct(survey, slide.screw.lead);
  const means = stationsOf(readings).map((station) => station.mean);
  const endFloat = mean([...(survey.endFloat ?? [0])]);
  const drivePlay = asPairs ? (survey.drivePlay ?? 0) : 0;
  const elsewhere = endFloat + drivePlay;
  const { settings } = settingsOf(slideInMillimetres(slide), lengthsIn("mm"));
  const decided = decide(
    { worst: Math.max(...means) - elsewhere, tight: Math.min(...means) - elsewhere, endFloat, drivePlay },
    settings,
  );
  return { decided, bestGuess: decided };
}

/** The program's way, with the given model of the profile. */
export function byModel(model: ProfileModel) {
  return ({ inspection, truth }: SimulatedSlide): Judgement => {
    const outcome = assessSurvey(inspection, inspection.surveys[0].id, model);
    if (!outcome.ok) throw new Error(outcome.problem.what);
    const { verdict, likeliest, chances, uniform, uneven, greatest, unevenChance, profile, tightSpot } =
      outcome.value;
    if (likeliest === null || chances === null) throw new Error("A simulated slide always has chances.");
    return {
      decided: verdict === "measure-more" || verdict === "no-verdict" ? undefined : verdict,
      bestGuess: likeliest,
      chance: chances[likeliest],
      uniform,
      uneven,
      greatest,
      left: outcome.value.afterAdjusting.worst,
      unevenChance,
      profile,
      misfit: outcome.value.checks.some(({ check }) => check === "readings fit no worn screw"),
      conformance: outcome.value.conformance,
      tightSpot: truth.backlash(tightSpot.position),
    };
  };
}
