import { inMillimetres } from "../../inspection/metric.ts";
import { type Outcome, succeeded } from "../../inspection/problem.ts";
import type { Inspection } from "../../inspection/schema.ts";
import { type AssessedSurvey, assessWithDraws } from "../assess.ts";
import type { Estimate } from "../assessment.ts";
import type { Assess } from "../assessOnce.ts";
import { estimateOf } from "../statistics/estimate.ts";
import { acceptanceOf } from "./acceptance.ts";
import { type Choice, chooseSurveys } from "./choice.ts";
import type { Change, ComparedSurvey, Comparison } from "./comparison.ts";
import { differenceOf, isSameEverywhere } from "./difference.ts";
import { notesOf } from "./notes.ts";
import { type Pair, pairsOf, type Sample } from "./pairs.ts";
import { repairBetween } from "./repairBetween.ts";

/**
 * Compares two surveys of one slide by the draws of their profiles; stations, indicator and way of measuring may
 * differ. Fails where there are no two surveys, one that is named is not there, or one holds no readings.
 */
export function compareSurveys(
  inspection: Inspection,
  choice: Choice = {},
  assess: Assess = assessWithDraws,
): Outcome<Comparison> {
  const chosen = chooseSurveys(inspection, choice);
  if (!chosen.ok) return chosen;
  const from = assess(inspection, chosen.value.from);
  if (!from.ok) return from;
  const to = assess(inspection, chosen.value.to);
  if (!to.ok) return to;
  return succeeded(comparisonOf(inMillimetres(inspection), from.value, to.value));
}

function comparisonOf(inspection: Inspection, from: AssessedSurvey, to: AssessedSurvey): Comparison {
  const pairs = pairsOf(from, to, playApart(from, to));
  const difference = differenceOf(from, to, pairs);
  return {
    from: compared(from),
    to: compared(to),
    done: repairBetween(inspection, from.survey, to.survey),
    change: changeOf(pairs, from.endFloat.measured && to.endFloat.measured),
    difference,
    sameEverywhere: isSameEverywhere(difference),
    acceptance: acceptanceOf(
      to,
      pairs.map((pair) => pair.to.loose),
    ),
    notes: notesOf(from, to),
    resolution: Math.max(from.assessment.resolution, to.assessment.resolution),
  };
}

/** Where only one survey's readings carry drive play, it is taken off those; of two alike it is part of both. */
function playApart(from: AssessedSurvey, to: AssessedSurvey): { readonly from: number; readonly to: number } {
  return from.asPairs === to.asPairs
    ? { from: 0, to: 0 }
    : { from: from.assessment.drivePlay, to: to.assessment.drivePlay };
}

function compared({ survey, assessment }: AssessedSurvey): ComparedSurvey {
  const { id, taken, stage } = survey;
  return { id, taken, stage, assessment };
}

function changeOf(pairs: readonly Pair[], endFloatKnown: boolean): Change {
  const change = (quantity: (sample: Sample) => number): Estimate =>
    estimateOf(pairs.map(({ from, to }) => quantity(to) - quantity(from)));
  return {
    uniform: change(({ tight }) => tight),
    uneven: change(({ loose, tight }) => loose - tight),
    greatest: change(({ loose }) => loose),
    endFloat: endFloatKnown ? change(({ endFloat }) => endFloat) : null,
    uniformLessEndFloat: endFloatKnown ? change(({ tight, endFloat }) => tight - endFloat) : null,
  };
}
