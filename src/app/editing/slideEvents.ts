import type { GivenVerdict, Inspection, SlideEvent } from "../../inspection/schema.ts";
import type { EditorState } from "../../records/editorState.ts";

/** The state with these events; the file has no key for them if there are none. */
export function withEvents(state: EditorState, events: readonly SlideEvent[]): EditorState {
  if (state.inspection === null) return state;
  const { events: _before, ...inspection } = state.inspection;
  return { ...state, inspection: events.length === 0 ? inspection : { ...inspection, events } };
}

export function sameEvents(one: readonly SlideEvent[], other: readonly SlideEvent[]): boolean {
  return JSON.stringify(one) === JSON.stringify(other);
}

/** The inspection with these verdicts in its history. */
export function withVerdicts(inspection: Inspection, verdicts: readonly GivenVerdict[] = []): Inspection {
  const { verdicts: _before, ...others } = inspection;
  return verdicts.length === 0 ? others : { ...others, verdicts };
}

/** The state with one more verdict, or the same object if its survey's last verdict says the same. */
export function withVerdict(state: EditorState, given: GivenVerdict): EditorState {
  if (state.inspection === null) return state;
  const { verdicts = [] } = state.inspection;
  const last = verdicts.findLast(({ survey }) => survey === given.survey);
  if (last !== undefined && saysTheSame(last, given)) return state;
  return { ...state, inspection: withVerdicts(state.inspection, [...verdicts, given]) };
}

/** Ignores the chance, which changes a little with every reading. */
function saysTheSame(one: GivenVerdict, other: GivenVerdict): boolean {
  return one.verdict === other.verdict && one.title === other.title && one.version === other.version;
}
