import { surveyInUnits } from "./metric.ts";
import { failed, type Outcome, succeeded } from "./problem.ts";
import type { Inspection } from "./schema.ts";

/**
 * Merges inspections of one slide: the surveys and events of all, in the order given, with the slide of the last one.
 * Fails if one is of another slide, or two surveys have the same id.
 */
export function mergeInspections(
  inspections: readonly [Inspection, ...(readonly Inspection[])],
): Outcome<Inspection> {
  const last = inspections.at(-1) ?? inspections[0];
  const other = inspections.find(({ slide }) => slide.id !== last.slide.id);
  if (other !== undefined) {
    return failed(
      "",
      `${called(other)} is another slide than ${called(last)}: what was read on one says nothing of a change of the other`,
      "Name inspections of one slide; a slide is told by its id.",
    );
  }
  const surveys = inspections.flatMap((each) =>
    each.surveys.map((survey) => surveyInUnits(survey, each.slide.units, last.slide.units)),
  );
  const ids = surveys.map(({ id }) => id);
  const twice = ids.find((id, index) => ids.indexOf(id) !== index);
  if (twice !== undefined) {
    return failed(
      `survey "${twice}"`,
      "there are two surveys of this id",
      "Give each survey an id of its own.",
    );
  }
  return succeeded({ ...last, surveys, events: inspections.flatMap(({ events }) => events ?? []) });
}

function called({ slide }: Inspection): string {
  return `"${slide.name}" (${slide.id})`;
}
