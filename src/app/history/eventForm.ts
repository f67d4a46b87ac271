import { html, LitElement, nothing, unsafeCSS } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { live } from "lit/directives/live.js";
import { type Picture, pictureIn } from "../../inspection/pictures.ts";
import { inOneLine } from "../../inspection/problem.ts";
import type { SlideEvent } from "../../inspection/schema.ts";
import { storePictures } from "../../records/pictures.ts";
import { EVENT_KINDS } from "../../report/inspectionWords.ts";
import type { InspectionEditor } from "../editing/inspectionEditor.ts";
import { notify } from "../ui/notice.ts";
import { controls } from "../ui/sharedStyles.ts";
import "./photograph.ts";
import eventFormCss from "./eventForm.css?inline";
import { pictureWords } from "./photograph.ts";
import { shrunk } from "./shrinkPhotograph.ts";

declare global {
  interface HTMLElementEventMap {
    "tightspot-event-done": CustomEvent<null>;
  }
}

/** One event of a slide, written as everything is here: each key is kept as it is typed. */
@customElement("tightspot-event-form")
export class EventForm extends LitElement {
  static override styles = [controls, unsafeCSS(eventFormCss)];

  @property({ attribute: false }) editor: InspectionEditor | null = null;
  @property({ attribute: false }) events: readonly SlideEvent[] = [];
  /** Its place among the events. */
  @property({ attribute: false }) at: number | null = null;

  @state() private isDateMissing = false;
  /** How many photographs are being made smaller. */
  @state() private waiting = 0;

  override render() {
    const event = this.#event;
    if (event === undefined) return nothing;
    return html`<div class="form" role="group" aria-label="Event">
      <label class="date">
        <span class="label">Date</span>
        <input
          type="date"
          aria-invalid=${this.isDateMissing}
          .value=${this.isDateMissing ? "" : live(event.date.slice(0, 10))}
          @input=${this.#dated}
        />
        ${this.isDateMissing ? html`<span class="wrong" role="alert">A date is needed.</span>` : nothing}
      </label>
      <label class="kind">
        <span class="label">What it was</span>
        <select @change=${this.#kindChosen}>
          ${EVENT_KINDS.map(
            ([kind, words]) => html`<option value=${kind} ?selected=${kind === event.kind}>${words}</option>`,
          )}
        </select>
      </label>
      <label class="note">
        <span class="label">What was done, by how much, with which parts</span>
        <textarea rows="3" .value=${live(event.note)} @input=${this.#noted}></textarea>
      </label>
      <ul>${this.#entries.map((entry, index) => this.#photograph(entry, index))}</ul>
      <div class="actions">
        ${this.#chooser("Add photographs", false)}
        ${matchMedia("(pointer: coarse)").matches ? this.#chooser("Take a photograph", true) : nothing}
        <button type="button" class="chief" @click=${this.#done}>Done</button>
      </div>
      <p class="hint" role="status">${this.waiting === 0 ? "" : "Making the photographs smaller …"}</p>
    </div>`;
  }

  /** To where the date is typed. */
  override focus(): void {
    this.renderRoot.querySelector("input")?.focus();
  }

  get #event(): SlideEvent | undefined {
    return this.at === null ? undefined : this.events[this.at];
  }

  /** Its photographs, and whatever else a file may hold among them. */
  get #entries(): readonly unknown[] {
    return this.#event?.pictures ?? [];
  }

  #photograph(entry: unknown, index: number) {
    const picture = pictureIn(entry);
    if (picture === null) return nothing;
    return html`<li>
      <tightspot-photograph .picture=${picture}></tightspot-photograph>
      <div>
        <label>
          <span class="label">What it shows, for those who cannot see it</span>
          <input
            type="text"
            .value=${live(picture.caption ?? "")}
            @input=${({ target }: Event) => this.#caption(picture, index, (target as HTMLInputElement).value)}
          />
        </label>
        <button
          type="button"
          class="quiet"
          aria-label="Remove: ${pictureWords(picture)}"
          @click=${() => this.#become({ pictures: this.#entries.toSpliced(index, 1) })}
        >
          Remove
        </button>
      </div>
    </li>`;
  }

  #chooser(label: string, isCamera: boolean) {
    return html`<button type="button" @click=${this.#choose}>${label}</button>
      <input
        type="file"
        hidden
        multiple
        accept="image/*"
        aria-label=${label}
        capture=${isCamera ? "environment" : nothing}
        @change=${this.#chosen}
      />`;
  }

  #choose({ currentTarget }: Event): void {
    const input = currentTarget instanceof HTMLElement ? currentTarget.nextElementSibling : null;
    if (input instanceof HTMLInputElement) input.click();
  }

  async #chosen({ target }: Event): Promise<void> {
    if (!(target instanceof HTMLInputElement)) return;
    const files = [...(target.files ?? [])];
    target.value = "";
    this.waiting += files.length;
    for (const file of files) {
      await this.#add(file);
      this.waiting -= 1;
    }
  }

  async #add(file: File): Promise<void> {
    const { at, editor } = this;
    const made = await shrunk(file);
    if (!made.ok) {
      notify(this, { tone: "wrong", text: inOneLine(made.problem) });
      return;
    }
    const taken = await storePictures(made.value);
    // Where it cannot be kept, it stays with the event, and so gets into a file.
    if (!taken.ok)
      notify(this, { tone: "wrong", text: `${file.name} is not kept: ${inOneLine(taken.problem)}` });
    const picture = taken.ok ? taken.value : made.value;
    const events = editor?.inspection?.events ?? [];
    const event = at === null ? undefined : events[at];
    if (at === null || event === undefined) return;
    editor?.setEvents(events.with(at, { ...event, pictures: [...(event.pictures ?? []), picture] }));
  }

  #dated({ target }: Event): void {
    if (!(target instanceof HTMLInputElement)) return;
    this.isDateMissing = target.value === "";
    if (!this.isDateMissing && target.value !== this.#event?.date.slice(0, 10)) {
      this.#become({ date: target.value }, "date");
    }
  }

  #kindChosen({ target }: Event): void {
    const kind = EVENT_KINDS.find(([value]) => value === (target as HTMLSelectElement).value)?.[0];
    if (kind !== undefined) this.#become({ kind });
  }

  #noted({ target }: Event): void {
    this.#become({ note: (target as HTMLTextAreaElement).value }, "note");
  }

  #caption(picture: Picture, index: number, caption: string): void {
    const { caption: _before, ...others } = picture;
    const captioned = caption === "" ? others : { ...others, caption };
    this.#become({ pictures: this.#entries.with(index, captioned) }, `caption ${index}`);
  }

  /** @param typingIn the field that is being typed in, if any */
  #become(change: Partial<SlideEvent>, typingIn = ""): void {
    const { at, editor, events } = this;
    const event = this.#event;
    if (at === null || event === undefined) return;
    editor?.setEvents(events.with(at, { ...event, ...change }), typingIn && `event ${at} ${typingIn}`);
  }

  #done(): void {
    this.dispatchEvent(new CustomEvent("tightspot-event-done"));
  }
}
