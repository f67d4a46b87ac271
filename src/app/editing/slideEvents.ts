import type { GivenVerdict, Inspection, SlideEvent } from "../../inspection/schema.ts";
import type { EditorState } from "../../records/editorState.ts";

/** The work with other events; without any, the file says nothing of them. */
export function withEvents(work: EditorState, events: readonly SlideEvent[]): EditorState {
  if (work.inspection === null) return work;
  const { events: _before, ...inspection } = work.inspection;
  return { ...work, inspection: events.length === 0 ? inspection : { ...inspection, events } };
}

export function areSame(one: readonly SlideEvent[], other: readonly SlideEvent[]): boolean {
  return JSON.stringify(one) === JSON.stringify(other);
}

/** The inspection with other verdicts that were given on its surveys. */
export function withVerdicts(inspection: Inspection, verdicts: readonly GivenVerdict[] = []): Inspection {
  const { verdicts: _before, ...others } = inspection;
  return verdicts.length === 0 ? others : { ...others, verdicts };
}

/**
 * The work with one more verdict noted. The same work where the last one of its survey says the same by the same
 * version of the program.
 */
export function withVerdict(work: EditorState, given: GivenVerdict): EditorState {
  if (work.inspection === null) return work;
  const { verdicts = [] } = work.inspection;
  const last = verdicts.findLast(({ survey }) => survey === given.survey);
  if (last !== undefined && saysTheSame(last, given)) return work;
  return { ...work, inspection: withVerdicts(work.inspection, [...verdicts, given]) };
}

/** Chances differ a little whenever a reading is added; what they lead to is what counts. */
function saysTheSame(one: GivenVerdict, other: GivenVerdict): boolean {
  return one.verdict === other.verdict && one.title === other.title && one.version === other.version;
}
