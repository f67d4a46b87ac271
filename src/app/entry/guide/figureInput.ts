import { failed, type Outcome, succeeded } from "../../../inspection/problem.ts";
import { numberTextOf } from "../../../intake/cell.ts";
import { type LengthUnit, lengthUnit } from "../../../intake/lengthUnit.ts";
import { type Counts, readTypedFigure } from "../../../intake/typedFigure.ts";
import type { GuideState } from "../../../records/editorState.ts";
import type { InspectionEditor } from "../../editing/inspectionEditor.ts";
import type { Row } from "../../editing/rows.ts";
import type { Asked } from "./askedFigures.ts";
import type { Turn } from "./nextStation.ts";

/** What the field asks for now: a position to read at, or one of the figures that are read there. */
export type Stage = "position" | Asked["column"];

/** What is asked for: the position while one is being typed, else the figure reached, else the first. */
export function stageOf({ typing }: GuideState, asked: readonly Asked[]): Stage {
  if (typing.position !== undefined) return "position";
  return (
    asked.findLast(({ column }) => typing[column] !== undefined)?.column ?? asked[0]?.column ?? "backlash"
  );
}

/** The unit that bare lengths are in; undefined where that is the slide's own. */
export function bareUnit({ unit }: GuideState): LengthUnit | undefined {
  return unit === undefined ? undefined : lengthUnit(unit);
}

/** A figure as it goes into a cell: as it was typed where it is a plain number of the slide's unit, else its value there. */
export function asCell(text: string, counts: Counts, unit: LengthUnit | undefined): Outcome<string> {
  const read = readTypedFigure(text, counts, unit);
  if (!read.ok) return read;
  const written = numberTextOf(text).trim().replace(",", ".");
  const isPlain = /^-?\d*\.?\d+$/.test(written) && Number(written) === read.value;
  return succeeded(isPlain ? written : String(read.value));
}

/** What Enter led to. */
export type Entered =
  | { readonly to: "figure" | "station" }
  | { readonly to: "reading"; readonly row: Row; readonly position: number };

/**
 * Takes what is typed: a position becomes the station to read next, a figure is kept until the last one of its
 * reading makes it whole.
 */
export function enter(
  editor: InspectionEditor,
  guide: GuideState,
  turn: Turn | null,
  asked: readonly Asked[],
  slideCounts: Counts,
): Outcome<Entered> {
  const stage = stageOf(guide, asked);
  const text = guide.typing[stage] ?? "";
  if (stage === "position") {
    const position = readTypedFigure(text, slideCounts);
    if (!position.ok) return position;
    const { position: _typed, ...typing } = guide.typing;
    editor.setGuide({ ...guide, typing, chosen: position.value });
    return succeeded({ to: "station" });
  }
  if (turn === null) return failed("", "there is no station to read", "Choose a position first.");
  const at = asked.findIndex(({ column }) => column === stage);
  const counts = asked[at]?.counts ?? slideCounts;
  const cell = asCell(text, counts, bareUnit(guide));
  if (!cell.ok) return cell;
  const next = asked[at + 1];
  if (next !== undefined) {
    // With its unit, so that it stays what it is whatever bare figures are taken in when it is gone back to.
    const figure = bareUnit(guide) === undefined ? cell.value : `${cell.value} ${counts}`;
    editor.setGuide({ ...guide, typing: { ...guide.typing, [stage]: figure, [next.column]: "" } });
    return succeeded({ to: "figure" });
  }
  const { chosen: _chosen, ...rest } = guide;
  const before = asked.slice(0, at).map(({ column }): readonly [string, string] => {
    const earlier = asCell(guide.typing[column] ?? "", counts, undefined);
    return [column, earlier.ok ? earlier.value : (guide.typing[column] ?? "")];
  });
  const figures = Object.fromEntries([...before, [stage, cell.value]]);
  const row = editor.addReading({ position: String(turn.position), ...figures });
  editor.setGuide({ ...rest, typing: {} });
  return succeeded({ to: "reading", row, position: turn.position });
}

/** Back to the figure before, where nothing is typed in this one yet; null where there is none. */
export function figureBefore(guide: GuideState, asked: readonly Asked[]): GuideState | null {
  const stage = stageOf(guide, asked);
  const { [stage]: text = "", ...typing } = guide.typing;
  const at = asked.findIndex(({ column }) => column === stage);
  return text === "" && (at > 0 || stage === "position") ? { ...guide, typing } : null;
}
