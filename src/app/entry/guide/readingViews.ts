import { html, nothing } from "lit";
import type { Assessment } from "../../../analysis/assessment.ts";
import type { EntryWarning } from "../../../analysis/outliers/entryWarnings.ts";
import type { Slide } from "../../../inspection/schema.ts";
import type { Units } from "../../../inspection/units.ts";
import type { LengthUnit } from "../../../intake/lengthUnit.ts";
import type { Counts } from "../../../intake/typedFigure.ts";
import { METHOD_DRAWINGS } from "../../drawings/methods.ts";
import { shown } from "../../drawings/primitives.ts";
import type { ColumnName } from "../../editing/columns.ts";
import type { Row } from "../../editing/rows.ts";
import { headline } from "../../results/headline.ts";
import { type Asked, ordinal, unitChoices } from "./askedFigures.ts";
import type { Stage } from "./figureInput.ts";
import { stationsAmong, type Turn, timesRead } from "./nextStation.ts";
import type { ReadingContext } from "./readingSession.ts";
import type { SuggestedStation } from "./suggestedStations.ts";
import { travelStrip } from "./travelStrip.ts";

/** What the field is called and counts, for a new figure or one that is corrected. */
export function fieldFor(
  stage: Stage | ColumnName,
  asked: readonly Asked[],
  units: Units,
): { readonly label: string; readonly counts: Counts; readonly choices: readonly LengthUnit[] } {
  if (stage === "position") return { label: "Position", counts: units, choices: [] };
  const found = asked.find(({ column }) => column === stage);
  const counts = found?.counts ?? units;
  return { label: found?.label ?? "Figure", counts, choices: unitChoices(counts) };
}

function stationName({ position }: Turn, { units }: Slide): string {
  return `${position} ${units}`;
}

/** Which station it is, where it lies, and the way back. */
export function station(
  turn: Turn | null,
  { editor, guide, slide }: ReadingContext,
  steps: { undo(): void; redo(): void },
) {
  const isTyping = guide.typing.position !== undefined;
  return html`<div class="head">
      <div>
        <p class="which">${isTyping || turn === null ? nothing : whichOf(turn)}</p>
        ${
          isTyping
            ? html`<h3 class="words">Where is it read?</h3>`
            : turn === null
              ? html`<h3 class="words">
                  ${guide.stations.length === 0 ? "Where to read next" : "All that was planned is read"}
                </h3>`
              : html`<h3 class="where">${stationName(turn, slide)}</h3>`
        }
      </div>
      <div class="steps">
        <button type="button" class="quiet" ?disabled=${!editor.canUndo} @click=${() => steps.undo()}>Undo</button>
        ${
          editor.canRedo
            ? html`<button type="button" class="quiet" @click=${() => steps.redo()}>Redo</button>`
            : nothing
        }
      </div>
    </div>`;
}

/** The travel with its stations, as far as they are read. */
function strip({ guide, slide, survey }: ReadingContext, turn: Turn | null) {
  const marks = stationsAmong(guide.stations, slide.units).map((position) => {
    const planned = guide.stations.filter((other) => other === position).length;
    const read = timesRead(position, survey.readings, slide.units);
    return { position, state: read >= planned ? "read" : read > 0 ? "begun" : "open" } as const;
  });
  return marks.length === 0 ? nothing : travelStrip(slide, marks, turn?.position ?? null);
}

function whichOf({ station: number, stations, reading, left }: Turn): string {
  const place = number === null ? "Off the plan" : `Station ${number} of ${stations}`;
  return `${place}, ${ordinal(reading)} reading · ${left === 0 ? "the last" : `${left} to come`}`;
}

/** What to do at the station, in words and drawn; once all is read, what it led to. */
export function howTo(
  bench: ReadingContext,
  asked: readonly Asked[],
  stage: Stage,
  turn: Turn | null,
  assessment: Assessment | null,
) {
  const { survey, slide, guide } = bench;
  if (turn === null && guide.typing.position === undefined) {
    return html`${strip(bench, turn)}
      ${assessment === null ? nothing : html`<p class="todo"><strong>${headline(assessment)}</strong></p>`}`;
  }
  const todo = asked.find(({ column }) => column === stage)?.todo;
  const drawing = METHOD_DRAWINGS[survey.method];
  if (turn === null || todo === undefined || drawing === undefined) return strip(bench, null);
  return html`${strip(bench, turn)}
  <details>
    <summary class="todo">${todo(stationName(turn, slide))}</summary>
    ${shown(drawing)}
  </details>`;
}

interface MarkActs {
  readonly correct: () => void;
  readonly again: () => void;
  readonly right: () => void;
}

/** A reading just taken that looks like a slip, and what can be done. */
export function slipMark({ message }: EntryWarning, index: number, row: Row, acts: MarkActs) {
  return html`<div class="slip" role="alert">
    <p><strong>Reading ${index + 1}, at ${row.cells.position}:</strong> ${message}</p>
    <div class="buttons">
      <button type="button" class="chief" @click=${acts.correct}>Correct</button>
      <button type="button" @click=${acts.again}>Take again</button>
      <button type="button" @click=${acts.right}>It is right</button>
    </div>
  </div>`;
}

interface CorrectionActs {
  readonly position: () => void;
  readonly done: () => void;
}

/** Which reading is being corrected. */
export function correcting(
  row: Row,
  index: number | null,
  column: ColumnName | undefined,
  { units }: Slide,
  acts: CorrectionActs,
) {
  return html`<div class="correcting">
    <h3>Correcting ${index === null ? "a reading" : `reading ${index + 1}`}, at ${row.cells.position} ${units}</h3>
    <div class="buttons">
      ${
        column === "position"
          ? nothing
          : html`<button type="button" class="quiet" @click=${acts.position}>Its position is wrong</button>`
      }
      <button type="button" class="quiet" @click=${acts.done}>Back to the next station</button>
    </div>
  </div>`;
}

/** Stations that would tell most, to go to at once. */
export function offers(
  offered: readonly SuggestedStation[],
  turn: Turn | null,
  { units }: Slide,
  goTo: (place: number | "end float") => void,
) {
  return offered.map((offer, rank) => {
    if ("endFloat" in offer) {
      return html`<div class="offer">
        <p>${offer.why}</p>
        <button type="button" @click=${() => goTo("end float")}>Measure the end float</button>
      </div>`;
    }
    if (offer.position === turn?.position || (rank > 0 && turn !== null)) return nothing;
    return html`<div class="offer">
      <p><strong>Most telling now: ${offer.position} ${units}.</strong> ${offer.why}</p>
      <button type="button" class=${turn === null && rank === 0 ? "chief" : ""} @click=${() => goTo(offer.position)}>
        Read at ${offer.position}
      </button>
    </div>`;
  });
}
