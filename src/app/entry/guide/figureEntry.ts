import { html, LitElement, nothing, unsafeCSS } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { live } from "lit/directives/live.js";
import { roundTo } from "../../../inspection/units.ts";
import type { LengthUnit } from "../../../intake/lengthUnit.ts";
import { type Counts, readTypedFigure } from "../../../intake/typedFigure.ts";
import { controls } from "../../ui/sharedStyles.ts";
import figureEntryCss from "./figureEntry.css?inline";
import keypadCss from "./keypad.css?inline";
import { keypad } from "./keypad.ts";

declare global {
  interface HTMLElementEventMap {
    /** What is typed so far. */
    "tightspot-figure-typed": CustomEvent<string>;
    /** Enter: the figure is to be taken. */
    "tightspot-figure-entered": CustomEvent<null>;
    /** Arrow up or down, or Escape: to the reading before, after, or back to where it was. */
    "tightspot-figure-leave": CustomEvent<"before" | "after" | "cancel">;
    /** The name of the unit that bare figures are to be in. */
    "tightspot-figure-unit": CustomEvent<string>;
  }
}

const SHOWN_UNITS: Readonly<Record<Counts, string>> = { mm: "mm", in: "in", divisions: "div.", plain: "" };

/** One large field for one figure, with a keypad. A gauge that types its value and Enter needs nothing else. */
@customElement("tightspot-figure-entry")
export class FigureEntry extends LitElement {
  static override styles = [controls, unsafeCSS(keypadCss), unsafeCSS(figureEntryCss)];

  @property() label = "";
  @property({ attribute: false }) counts: Counts = "mm";
  /** Units that bare figures can be taken in; fewer than two leave nothing to choose. */
  @property({ attribute: false }) choices: readonly LengthUnit[] = [];
  @property({ attribute: false }) unit: LengthUnit | undefined = undefined;
  @property() text = "";
  /** Why what was entered is not taken. */
  @property() problem = "";
  /** Why what is typed looks like a slip. */
  @property() doubt = "";
  @property() enter = "Enter";

  @state() private wantsKeypad = false;

  override connectedCallback(): void {
    super.connectedCallback();
    document.addEventListener("keydown", this.#catchKey);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    document.removeEventListener("keydown", this.#catchKey);
  }

  override render() {
    const { label, counts, choices, unit, text } = this;
    const shown = unit?.name ?? SHOWN_UNITS[counts];
    return html`
      <div>
        <label for="figure">${label}</label>
        <div class="box">
        <input
          id="figure"
          type="text"
          inputmode="none"
          enterkeyhint="next"
          autocomplete="off"
          autocapitalize="off"
          spellcheck="false"
          aria-label="${label}${shown === "" ? "" : `, ${shown}`}"
          aria-invalid=${this.problem !== ""}
          aria-describedby="under"
          .value=${live(text)}
          @input=${({ target }: InputEvent) => this.#typed((target as HTMLInputElement).value)}
          @keydown=${this.#onKey}
        />
          ${
            choices.length < 2
              ? html`<span class="unit" aria-hidden="true">${shown}</span>`
              : this.#units(choices, shown)
          }
        </div>
      </div>
      <p id="under" class="under ${this.#underClass}">${this.problem || this.doubt || this.#readAs}</p>
      <div class=${this.wantsKeypad ? "asked-for" : ""}>
        ${keypad({
          counts,
          enter: this.enter,
          pressed: (key) => this.#edit((field) => insert(field, key)),
          erased: () => this.#edit(erase),
          entered: () => this.#entered(),
        })}
      </div>
      ${
        this.wantsKeypad
          ? nothing
          : html`<button type="button" class="quiet show-keypad" @click=${() => this.#showKeypad()}>
              Show a keypad
            </button>`
      }
    `;
  }

  /** To the field, with all that is in it selected: what is typed next replaces it. */
  override focus(): void {
    void this.updateComplete.then(() => {
      this.#field?.focus({ preventScroll: true });
      this.#field?.select();
    });
  }

  get #field(): HTMLInputElement | null {
    return this.renderRoot.querySelector("input");
  }

  get #underClass(): string {
    if (this.problem !== "") return "wrong";
    return this.doubt === "" ? "" : "doubt";
  }

  /** What a figure with a unit or a fraction is read as, so that nothing is read otherwise than it was meant. */
  get #readAs(): string {
    const { text, counts, unit } = this;
    if (counts !== "mm" && counts !== "in") return "";
    const read = readTypedFigure(text, counts, unit);
    const isPlain = /^[\d.,\s+-]*$/.test(text) && (unit === undefined || unit.name === counts);
    return isPlain || !read.ok ? "" : `Read as ${roundTo(read.value, counts === "in" ? 5 : 4)} ${counts}`;
  }

  #units(choices: readonly LengthUnit[], shown: string) {
    return html`<select
      aria-label="Unit of a bare number"
      @change=${({ target }: Event) => {
        this.#tell("tightspot-figure-unit", (target as HTMLSelectElement).value);
        this.focus();
      }}
    >
      ${choices.map(({ name }) => html`<option value=${name} ?selected=${name === shown}>${name}</option>`)}
    </select>`;
  }

  #showKeypad(): void {
    this.wantsKeypad = true;
    this.focus();
  }

  #edit(change: (field: HTMLInputElement) => void): void {
    const field = this.#field;
    if (field === null) return;
    change(field);
    this.#typed(field.value);
  }

  #typed(text: string): void {
    this.text = text;
    this.#tell("tightspot-figure-typed", text);
  }

  #entered(): void {
    this.#tell("tightspot-figure-entered", null);
  }

  #onKey(event: KeyboardEvent): void {
    if (event.isComposing) return;
    const { key } = event;
    if (key === "Enter") this.#entered();
    else if (key === "ArrowUp") this.#tell("tightspot-figure-leave", "before");
    else if (key === "ArrowDown") this.#tell("tightspot-figure-leave", "after");
    else if (key === "Escape") this.#tell("tightspot-figure-leave", "cancel");
    else return;
    event.preventDefault();
  }

  /** Figures typed while nothing else takes them, as by a gauge after a tap elsewhere, go into the field. */
  readonly #catchKey = (event: KeyboardEvent): void => {
    const { key, ctrlKey, metaKey, altKey } = event;
    if (event.defaultPrevented || ctrlKey || metaKey || altKey || !/^[\d.,+-]$/.test(key)) return;
    const [inner] = event.composedPath();
    const takesText =
      inner instanceof Element && inner.matches("input, select, textarea, [contenteditable], dialog *");
    if (takesText) return;
    this.#field?.focus({ preventScroll: true });
    this.#field?.select();
  };

  #tell(name: string, detail: string | null): void {
    this.dispatchEvent(new CustomEvent(name, { detail }));
  }
}

function insert(field: HTMLInputElement, text: string): void {
  const [from, to] = [field.selectionStart ?? field.value.length, field.selectionEnd ?? field.value.length];
  field.setRangeText(text, from, to, "end");
}

function erase(field: HTMLInputElement): void {
  const [from, to] = [field.selectionStart ?? field.value.length, field.selectionEnd ?? field.value.length];
  if (from !== to) field.setRangeText("", from, to, "end");
  else if (from > 0) field.setRangeText("", from - 1, from, "end");
}
