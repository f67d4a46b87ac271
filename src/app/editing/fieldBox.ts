import { html, LitElement, nothing, type TemplateResult, unsafeCSS } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { live } from "lit/directives/live.js";
import type { Units } from "../../inspection/units.ts";
import type { Field } from "./fieldList.ts";
import "../help/aboutLink.ts";
import { controls } from "../ui/sharedStyles.ts";
import fieldBoxCss from "./fieldBox.css?inline";

declare global {
  interface HTMLElementEventMap {
    "tightspot-typed": CustomEvent<string>;
  }
}

/** An input with its label, unit, assumed value and problem. */
@customElement("tightspot-field")
export class FieldBox extends LitElement {
  static override styles = [controls, unsafeCSS(fieldBoxCss)];

  @property({ attribute: false }) field: Field = { path: "", label: "", kind: "text" };
  @property() text = "";
  @property() problem = "";
  /** The value assumed if the field is empty, in words. */
  @property() assumed = "";
  @property() units: Units = "mm";

  /** The text being typed, shown unchanged until the field loses the focus. */
  @state() private typing: string | null = null;

  override render() {
    const { field, problem } = this;
    const about = problem === "" ? field.hint : problem;
    return html`
      <div class="top">
        <label class="label" for="input">${field.label}</label>
        ${field.about === undefined ? nothing : html`<tightspot-about .topic=${field.about}></tightspot-about>`}
      </div>
      <div class="box ${this.#unit === "" ? "" : "with-unit"}">
        ${this.#control()}
        ${this.#unit === "" ? nothing : html`<span class="unit" aria-hidden="true">${this.#unit}</span>`}
      </div>
      <p id="under" class="under ${problem === "" ? "hint" : "wrong"}" ?hidden=${about === undefined}>${about}</p>
    `;
  }

  override focus(): void {
    this.renderRoot.querySelector<HTMLElement>("#input")?.focus();
  }

  get #unit(): string {
    const { kind, unit } = this.field;
    return unit ?? (kind === "length" || kind === "lengths" ? this.units : "");
  }

  #control(): TemplateResult {
    const { kind, choices } = this.field;
    if (kind === "yes-no") {
      return this.#select([
        ["yes", "Yes"],
        ["no", "No"],
      ]);
    }
    if (choices !== undefined) return this.#select(choices);
    if (kind === "note") {
      return html`<textarea
        id="input"
        .value=${live(this.#shown)}
        @input=${this.#onInput}
        @blur=${this.#onBlur}
      ></textarea>`;
    }
    const isNumber = kind === "length" || kind === "number";
    return html`<input
      id="input"
      type=${kind === "date" ? "date" : "text"}
      inputmode=${isNumber ? "decimal" : "text"}
      autocomplete="off"
      placeholder=${this.assumed}
      aria-invalid=${this.problem !== ""}
      aria-describedby="under"
      aria-label=${this.#unit === "" ? nothing : `${this.field.label}, ${this.#unit}`}
      .value=${live(this.#shown)}
      @input=${this.#onInput}
      @blur=${this.#onBlur}
    />`;
  }

  #select(choices: NonNullable<Field["choices"]>): TemplateResult {
    const isOpen = !choices.some(([value]) => value === this.text);
    return html`<select
      id="input"
      aria-invalid=${this.problem !== ""}
      aria-describedby="under"
      @change=${this.#onInput}
    >
      ${
        isOpen || this.assumed !== "" || this.field.kind === "yes-no"
          ? html`<option value="" ?selected=${isOpen}>
              ${this.assumed || "Not stated"}
            </option>`
          : nothing
      }
      ${choices.map(
        ([value, label]) => html`<option value=${value} ?selected=${value === this.text}>${label}</option>`,
      )}
    </select>`;
  }

  get #shown(): string {
    return this.typing ?? this.text;
  }

  #onInput({ target }: Event): void {
    if (!(target instanceof HTMLElement) || !("value" in target)) return;
    const text = String(target.value);
    if (!(target instanceof HTMLSelectElement)) this.typing = text;
    this.dispatchEvent(new CustomEvent("tightspot-typed", { detail: text }));
  }

  #onBlur(): void {
    this.typing = null;
  }
}
