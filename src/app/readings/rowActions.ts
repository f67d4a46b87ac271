import { css, html, LitElement } from "lit";
import { customElement, property } from "lit/decorators.js";
import { controls } from "../style/controls.ts";

declare global {
  interface HTMLElementEventMap {
    /** Why the reading is to be struck. */
    "tightspot-strike": CustomEvent<string>;
    "tightspot-unstrike": CustomEvent<null>;
    "tightspot-delete": CustomEvent<null>;
  }
}

const USUAL_REASONS = ["Indicator knocked", "Misread", "Approach too short", "Slide lock was on"];

/** What can be done with one reading: strike it with a reason, count it again, delete it. */
@customElement("tightspot-row-actions")
export class RowActions extends LitElement {
  static override styles = [
    controls,
    css`
      form,
      .again {
        display: flex;
        flex-wrap: wrap;
        align-items: end;
        gap: 0.5rem;
        padding: 0.5rem;
        border-radius: var(--round);
        background: var(--wash);
      }

      label {
        flex: 1 1 10rem;
      }
    `,
  ];

  @property({ type: Boolean }) struck = false;

  override firstUpdated(): void {
    this.renderRoot.querySelector<HTMLElement>("input, button")?.focus();
  }

  override render() {
    const remove = html`<button type="button" class="quiet" @click=${() => this.#tell("tightspot-delete", null)}>
      Delete
    </button>`;
    if (this.struck) {
      return html`<div class="again">
        <button type="button" @click=${() => this.#tell("tightspot-unstrike", null)}>Count it again</button>
        ${remove}
      </div>`;
    }
    return html`<form @submit=${this.#strike}>
      <label>
        <span class="label">Strike it, because</span>
        <input name="why" required list="reasons" autocomplete="off" />
      </label>
      <datalist id="reasons">${USUAL_REASONS.map((reason) => html`<option value=${reason}></option>`)}</datalist>
      <button type="submit">Strike</button>
      ${remove}
    </form>`;
  }

  #strike(event: SubmitEvent): void {
    event.preventDefault();
    const why = this.renderRoot.querySelector("input")?.value.trim() ?? "";
    if (why !== "") this.#tell("tightspot-strike", why);
  }

  #tell(name: string, detail: string | null): void {
    this.dispatchEvent(new CustomEvent(name, { detail }));
  }
}
