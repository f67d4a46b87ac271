import { html, LitElement, nothing, unsafeCSS } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { type Picture, pictureIn } from "../../inspection/pictures.ts";
import type { GivenVerdict, Inspection, SlideEvent } from "../../inspection/schema.ts";
import { STAGES } from "../editing/fieldList.ts";
import type { InspectionEditor } from "../editing/inspectionEditor.ts";
import { dayOf, today } from "../editing/localTime.ts";
import { notify } from "../ui/notice.ts";
import { controls } from "../ui/sharedStyles.ts";
import "./eventForm.ts";
import { kindWords } from "../../report/inspectionWords.ts";
import type { EventForm } from "./eventForm.ts";
import { noteVerdict } from "./noteVerdict.ts";
import { pictureWords } from "./photograph.ts";
import "./photographDialog.ts";
import { type TimelineEntry, timelineOf } from "../../inspection/timeline.ts";
import historyPanelCss from "./historyPanel.css?inline";

/** Surveys, the verdicts given on them, and what was done to the slide in between. */
@customElement("tightspot-history")
export class HistoryPanel extends LitElement {
  static override styles = [controls, unsafeCSS(historyPanelCss)];

  @property({ attribute: false }) editor: InspectionEditor | null = null;
  @property({ attribute: false }) inspection: Inspection | null = null;
  /** The survey that is shown, by its id. */
  @property() shown = "";

  /** Which end of the history stands first; what happened last is what most look for. */
  @state() private isNewestFirst = true;
  /** The event that is being written, by its place in the file. */
  @state() private writing: number | null = null;
  /** The photograph that is shown large. */
  @state() private large: Picture | null = null;

  override render() {
    const { inspection, editor } = this;
    if (inspection === null || editor === null) return nothing;
    const { events = [] } = inspection;
    const written = this.writing === null ? undefined : events[this.writing];
    const entries = timelineOf(inspection);
    const shown = this.isNewestFirst ? entries.toReversed() : entries;
    return html`<div class="content">
      <div class="actions screen-only">
        <button type="button" class="add" @click=${this.#add}>Add an event</button>
        ${
          entries.length < 2
            ? nothing
            : html`<button type="button" class="quiet" @click=${this.#turn}>
                ${this.isNewestFirst ? "Oldest first" : "Newest first"}
              </button>`
        }
      </div>
      ${
        written === undefined
          ? nothing
          : html`<tightspot-event-form
              .editor=${editor}
              .events=${events}
              .at=${this.writing}
              @tightspot-event-done=${this.#done}
            ></tightspot-event-form>`
      }
      <ol aria-label=${this.isNewestFirst ? "History, newest first" : "History, oldest first"}>
        ${shown
          .filter((entry) => entry.of === "survey" || entry.at !== this.writing || written === undefined)
          .map((entry) => this.#entry(entry))}
      </ol>
      <p class="hint screen-only">
        The verdict on a survey is noted here, with the version of the program that gave it, when you save a file, begin
        another survey or leave after changing its readings, when you open or save its report, and when you add an
        event. Looking at it notes nothing.
      </p>
      ${
        this.large === null
          ? nothing
          : html`<tightspot-photograph-dialog
              .picture=${this.large}
              @tightspot-photograph-done=${() => {
                this.large = null;
              }}
            ></tightspot-photograph-dialog>`
      }
    </div>`;
  }

  #entry(entry: TimelineEntry) {
    if (entry.of === "event") return this.#event(entry);
    const { survey, verdicts } = entry;
    const stage = STAGES.find(([value]) => value === survey.stage)?.[1] ?? survey.stage;
    const count = survey.readings.length;
    return html`<li>
      <h3>Survey, ${stage.toLowerCase()} <time datetime=${survey.taken}>${dayOf(survey.taken)}</time></h3>
      <p class="given">
        ${count === 1 ? "one reading" : `${count} readings`}${verdicts.length === 0 ? ", no verdict noted yet" : ""}
      </p>
      ${verdicts.length === 0 ? nothing : html`<ul class="verdicts">${verdicts.map(verdictLine)}</ul>`}
      ${
        survey.id === this.shown
          ? nothing
          : html`<div class="actions screen-only">
              <button
                type="button"
                class="quiet"
                aria-label="Show the survey of ${dayOf(survey.taken)}"
                @click=${() => this.editor?.chooseSurvey(survey.id)}
              >
                Show
              </button>
            </div>`
      }
    </li>`;
  }

  #event({ event, at }: Extract<TimelineEntry, { of: "event" }>) {
    const { date, kind, note, pictures = [] } = event;
    const photographs = pictures.flatMap((entry) => pictureIn(entry) ?? []);
    const called = `${kindWords(kind).toLowerCase()}, ${dayOf(date)}`;
    return html`<li class="event">
      <h3>${kindWords(kind)} <time datetime=${date}>${dayOf(date)}</time></h3>
      ${note.trim() === "" ? nothing : html`<p class="note">${note}</p>`}
      ${
        photographs.length === 0
          ? nothing
          : html`<div class="photographs">${photographs.map((picture) => this.#thumbnail(picture))}</div>`
      }
      <div class="actions screen-only">
        <button type="button" class="quiet" aria-label="Edit: ${called}" @click=${() => this.#write(at)}>Edit</button>
        <button type="button" class="quiet" aria-label="Delete: ${called}" @click=${() => this.#delete(at, event)}>
          Delete
        </button>
      </div>
    </li>`;
  }

  #thumbnail(picture: Picture) {
    return html`<button
      type="button"
      aria-label="Show large: ${pictureWords(picture)}"
      @click=${() => {
        this.large = picture;
      }}
    >
      <tightspot-photograph .picture=${picture}></tightspot-photograph>
    </button>`;
  }

  #turn(): void {
    this.isNewestFirst = !this.isNewestFirst;
  }

  #add(): void {
    noteVerdict(this);
    const events = this.editor?.inspection?.events ?? [];
    this.editor?.setEvents([...events, { date: today(), kind: "other", note: "" }]);
    void this.#write(events.length);
  }

  async #write(at: number): Promise<void> {
    this.writing = at;
    await this.updateComplete;
    this.renderRoot.querySelector<EventForm>("tightspot-event-form")?.focus();
  }

  #done(): void {
    this.writing = null;
    this.renderRoot.querySelector<HTMLElement>(".add")?.focus();
  }

  #delete(at: number, event: SlideEvent): void {
    const { editor } = this;
    if (editor === null) return;
    editor.setEvents((editor.inspection?.events ?? []).toSpliced(at, 1));
    this.writing = null;
    this.renderRoot.querySelector<HTMLElement>(".add")?.focus();
    notify(this, {
      tone: "done",
      text: `“${kindWords(event.kind)}, ${dayOf(event.date)}” was deleted.`,
      action: {
        label: "Undo",
        act: () => editor.setEvents((editor.inspection?.events ?? []).toSpliced(at, 0, event)),
      },
    });
  }
}

function verdictLine({ given, version, verdict, title, chance, summary }: GivenVerdict) {
  const sure = chance === null ? "" : ` ${chanceWords(chance)}.`;
  return html`<li>
    <p><strong>${title ?? verdict}</strong>.${sure} ${summary}</p>
    <p class="given">Given on ${dayOf(given)} by version ${version}</p>
  </li>`;
}

/** Never certain: what rounds to a hundred in a hundred is told as more than 99. */
function chanceWords(chance: number): string {
  const share = Math.round(chance * 100);
  if (share > 99) return "More than 99 in 100 sure";
  return `${share} in 100 sure`;
}
