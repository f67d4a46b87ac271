import type { GivenVerdict, Inspection, SlideEvent } from "../../inspection/schema.ts";
import type { EditorState } from "../../records/editorState.ts";

/** The work with other events; without any, the file says nothing of them. */
export function withEvents(state: EditorState, events: readonly SlideEvent[]): EditorState {
  if (state.inspection === null) return state;
  const { events: _before, ...inspection } = state.inspection;
  return { ...state, inspection: events.length === 0 ? inspection : { ...inspection, events } };
}

export function sameEvents(one: readonly SlideEvent[], other: readonly SlideEvent[]): boolean {
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
export function withVerdict(state: EditorState, given: GivenVerdict): EditorState {
  if (state.inspection === null) return state;
  const { verdicts = [] } = state.inspection;
  const last = verdicts.findLast(({ survey }) => survey === given.survey);
  if (last !== undefined && saysTheSame(last, given)) return state;
  return { ...state, inspection: withVerdicts(state.inspection, [...verdicts, given]) };
}

/** Chances differ a little whenever a reading is added; what they lead to is what counts. */
function saysTheSame(one: GivenVerdict, other: GivenVerdict): boolean {
  return one.verdict === other.verdict && one.title === other.title && one.version === other.version;
}
