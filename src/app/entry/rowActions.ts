import { html, LitElement, unsafeCSS } from "lit";
import { customElement, property } from "lit/decorators.js";
import { controls } from "../ui/sharedStyles.ts";
import rowActionsCss from "./rowActions.css?inline";

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
  static override styles = [controls, unsafeCSS(rowActionsCss)];

  @property({ type: Boolean }) struck = false;

  override firstUpdated(): void {
    // On a phone the field would bring up a keyboard over the reasons that can be tapped.
    const first = window.matchMedia("(pointer: coarse)").matches ? "button" : "input, button";
    this.renderRoot.querySelector<HTMLElement>(first)?.focus();
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
      <p class="label" id="because">Strike it, because</p>
      <div class="reasons" role="group" aria-labelledby="because">
        ${USUAL_REASONS.map(
          (reason) => html`<button type="button" @click=${() => this.#tell("tightspot-strike", reason)}>
            ${reason}
          </button>`,
        )}
      </div>
      <input name="why" required autocomplete="off" aria-label="Strike it, because" placeholder="another reason" />
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
