import { dayNumber } from "../../inspection/dates.ts";
import { inMillimetres } from "../../inspection/metric.ts";
import { type Outcome, succeeded } from "../../inspection/problem.ts";
import type { Inspection, Survey } from "../../inspection/schema.ts";
import { type Assess, type AssessedSurvey, assessWithDraws } from "../assess.ts";
import type { Estimate } from "../assessment.ts";
import { estimateOf } from "../statistics/estimate.ts";
import { acceptanceOf } from "./acceptance.ts";
import { chooseSurveys, type SurveyChoice } from "./chooseSurveys.ts";
import type { Change, ComparedSurvey, Comparison, Repair } from "./comparison.ts";
import { differenceOf, isSameEverywhere } from "./difference.ts";
import { notesOf } from "./notes.ts";
import { type Pair, pairsOf, type Sample } from "./pairedDraws.ts";

/**
 * Compares two surveys of one slide by the draws of their profiles; stations, indicator and method may differ. Fails if
 * there are no two surveys, a named one does not exist, or one has no readings.
 */
export function compareSurveys(
  inspection: Inspection,
  choice: SurveyChoice = {},
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
  const pairs = pairsOf(from, to, drivePlayRemoved(from, to));
  const difference = differenceOf(from, to, pairs);
  return {
    from: comparedSurvey(from),
    to: comparedSurvey(to),
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

/** Drive play to subtract, in millimetres: where only one survey's readings carry it, it is removed from those. */
function drivePlayRemoved(
  from: AssessedSurvey,
  to: AssessedSurvey,
): { readonly from: number; readonly to: number } {
  return from.asPairs === to.asPairs
    ? { from: 0, to: 0 }
    : { from: from.assessment.drivePlay, to: to.assessment.drivePlay };
}

function comparedSurvey({ survey, assessment }: AssessedSurvey): ComparedSurvey {
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

/** What was done to the slide between two surveys: from the events, else from the stages of the surveys. */
export function repairBetween({ surveys, events = [] }: Inspection, from: Survey, to: Survey): Repair | null {
  const [start, end] = [dayNumber(from.taken), dayNumber(to.taken)];
  const kinds = events
    .filter(({ date }) => dayNumber(date) >= Math.floor(start) && dayNumber(date) <= end)
    .map(({ kind }) => kind)
    .filter((kind) => kind !== "other");
  const stages = surveys
    .filter(({ taken, id }) => id !== from.id && dayNumber(taken) >= start && dayNumber(taken) <= end)
    .map(({ stage }) => stage);
  const done = new Set<Repair>(
    kinds.length > 0
      ? kinds
      : stages.flatMap((stage): readonly Repair[] =>
          stage === "after-adjusting" ? ["adjusted"] : stage === "after-repair" ? ["repaired"] : [],
        ),
  );
  const [only] = done;
  return only === undefined ? null : done.size === 1 ? only : "repaired";
}
