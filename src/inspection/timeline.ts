import { dayNumber } from "./dates.ts";
import type { GivenVerdict, Inspection, SlideEvent, Stage, Survey } from "./schema.ts";

/** An entry in the history of a slide. */
export type TimelineEntry =
  | {
      readonly of: "survey";
      readonly date: string;
      readonly survey: Survey;
      /** Verdicts given on it, in order. */
      readonly verdicts: readonly GivenVerdict[];
    }
  | {
      readonly of: "event";
      readonly date: string;
      readonly event: SlideEvent;
      /** Its index among the events of the file. */
      readonly at: number;
    };

/** Surveys and events of a slide by date. */
export function timelineOf({ surveys, events = [], verdicts = [] }: Inspection): readonly TimelineEntry[] {
  const entries: readonly TimelineEntry[] = [
    ...surveys.map((survey): TimelineEntry => {
      const own = verdicts.filter((given) => given.survey === survey.id);
      return { of: "survey", date: survey.taken, survey, verdicts: own };
    }),
    ...events.map((event, at): TimelineEntry => ({ of: "event", date: event.date, event, at })),
  ];
  return entries.toSorted((one, other) => dayOf(one) - dayOf(other) || withinDay(one, other));
}

/** Within a day by the time if both have one; else a repair comes between the surveys before and after it. */
function withinDay(one: TimelineEntry, other: TimelineEntry): number {
  const haveTimes = one.date.includes("T") && other.date.includes("T");
  return (haveTimes ? dayNumber(one.date) - dayNumber(other.date) : 0) || rank(one) - rank(other);
}

const RANKS: Readonly<Record<Stage, number>> = {
  "before-repair": 0,
  routine: 0,
  "after-adjusting": 2,
  "after-repair": 2,
  "running-in": 2,
};

function rank(entry: TimelineEntry): number {
  return entry.of === "event" ? 1 : RANKS[entry.survey.stage];
}

function dayOf({ date }: TimelineEntry): number {
  return Math.floor(dayNumber(date.slice(0, 10)));
}
