import { surveyInUnits } from "./metric.ts";
import { failed, type Outcome, succeeded } from "./problem.ts";
import type { Inspection } from "./schema.ts";

/**
 * Inspections of one slide as one, with the surveys and events of all, in the order given. The slide is as the last
 * of them has it. Fails where one is of another slide, or where two surveys have one id.
 */
export function ofOneSlide(
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
