import { mergeInspections } from "../../inspection/mergeInspections.ts";
import { surveyInUnits } from "../../inspection/metric.ts";
import { failed, type Outcome, succeeded } from "../../inspection/problem.ts";
import type { Inspection, Survey } from "../../inspection/schema.ts";
import type { EditorState } from "../../records/editorState.ts";
import { withoutSurvey } from "./surveys.ts";

/** The state after adding another inspection of the slide, and what was added. */
export interface Joined {
  readonly state: EditorState;
  /** The ids of the surveys that were added. */
  readonly surveys: readonly string[];
  readonly events: NonNullable<Inspection["events"]>;
}

/**
 * Adds the surveys and events of another inspection of the same slide. Skips those already present, and gives a survey
 * a new id if its own is taken. The slide's own data stay. Fails if it is another slide, or nothing is new.
 */
export function withSurveysOf(state: EditorState, other: Inspection): Outcome<Joined> {
  const { inspection } = state;
  if (inspection === null) throw new Error("Surveys can only be added to a described slide.");
  const one = mergeInspections([{ ...other, surveys: [] }, inspection]);
  if (!one.ok) return one;
  const { slide, surveys, events = [] } = inspection;
  const fresh = notAmong(
    surveys,
    other.surveys.map((survey) => surveyInUnits(survey, other.slide.units, slide.units)),
  );
  const added = withOwnIds(fresh, [slide.id, ...surveys.map(({ id }) => id)]);
  const newEvents = notAmong(events, other.events ?? []);
  if (added.length + newEvents.length === 0) {
    return failed("", "all its surveys are here already", "Choose a file with another survey of this slide.");
  }
  return succeeded({
    state: {
      ...state,
      inspection: {
        ...inspection,
        surveys: [...surveys, ...added],
        ...(newEvents.length > 0 && { events: [...events, ...newEvents] }),
      },
    },
    surveys: added.map(({ id }) => id),
    events: newEvents,
  });
}

/** The state without what was added. */
export function withoutJoined(state: EditorState, { surveys, events }: Joined): EditorState {
  const { inspection, ...rest } = surveys.reduce(withoutSurvey, state);
  if (inspection?.events === undefined) return { ...rest, inspection };
  return {
    ...rest,
    inspection: { ...inspection, events: inspection.events.filter((each) => !events.includes(each)) },
  };
}

function notAmong<Each>(known: readonly Each[], others: readonly Each[]): readonly Each[] {
  const texts = new Set(known.map((each) => JSON.stringify(each)));
  return others.filter((each) => !texts.has(JSON.stringify(each)));
}

function withOwnIds(surveys: readonly Survey[], known: readonly string[]): readonly Survey[] {
  const taken = new Set(known);
  return surveys.map((survey) => {
    let id = survey.id;
    for (let number = 2; taken.has(id); number++) id = `${survey.id}-${number}`;
    taken.add(id);
    return { ...survey, id };
  });
}
