import { html, LitElement, nothing, unsafeCSS } from "lit";
import { customElement, property } from "lit/decorators.js";
import type { SaveStatus } from "../../records/autosave.ts";
import { controls } from "../ui/sharedStyles.ts";
import saveStatusLineCss from "./saveStatusLine.css?inline";

declare global {
  interface HTMLElementEventMap {
    "tightspot-retry": CustomEvent<null>;
    "tightspot-copy": CustomEvent<null>;
    "tightspot-show-other": CustomEvent<null>;
  }
}

const TIME = new Intl.DateTimeFormat(undefined, { timeStyle: "short" });

/** Whether the inspection is saved, and what to do if it is not. */
@customElement("tightspot-save-status")
export class SaveStatusLine extends LitElement {
  static override styles = [controls, unsafeCSS(saveStatusLineCss)];

  /** Whether a file holds all that was entered. */
  @property({ type: Boolean, attribute: "in-file" }) inFile = false;
  @property({ attribute: false }) saveStatus: SaveStatus = { state: "saving" };

  override render() {
    const { saveStatus } = this;
    if (saveStatus.state === "saving") return html`<p class="state">Saving …</p>`;
    if (saveStatus.state === "saved") {
      return saveStatus.at === ""
        ? nothing
        : html`<p class="state">Saved in this browser, ${TIME.format(new Date(saveStatus.at))}${this.inFile ? ", and in a file" : " · not in a file yet"}</p>`;
    }
    const { because, problem } = saveStatus;
    return html`<div class="not-saved" role="alert">
      <p><strong>Not saved:</strong> ${problem.what}. ${problem.cure}</p>
      ${
        because === "conflict"
          ? html`${this.#button("Keep mine as a copy", "tightspot-copy")}
            ${this.#button("Show the other", "tightspot-show-other")}`
          : this.#button("Try again", "tightspot-retry")
      }
    </div>`;
  }

  #button(label: string, event: string) {
    return html`<button
      type="button"
      @click=${() => this.dispatchEvent(new CustomEvent(event, { bubbles: true, composed: true }))}
    >
      ${label}
    </button>`;
  }
}
