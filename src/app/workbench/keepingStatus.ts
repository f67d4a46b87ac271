import { css, html, LitElement, nothing } from "lit";
import { customElement, property } from "lit/decorators.js";
import type { Keeping } from "../../records/keeper.ts";
import { controls } from "../style/controls.ts";

declare global {
  interface HTMLElementEventMap {
    "tightspot-retry": CustomEvent<null>;
    "tightspot-copy": CustomEvent<null>;
    "tightspot-show-other": CustomEvent<null>;
  }
}

const TIME = new Intl.DateTimeFormat(undefined, { timeStyle: "short" });

/** Whether what is on the page is kept, and what to do when it is not. */
@customElement("tightspot-keeping")
export class KeepingStatus extends LitElement {
  static override styles = [
    controls,
    css`
      .state {
        color: var(--ink-pale);
        font-size: var(--small);
        font-variant-numeric: tabular-nums;
      }

      .not-kept {
        display: flex;
        flex-wrap: wrap;
        align-items: center;
        gap: 0.5rem 0.75rem;
        padding: 0.625rem 0.875rem;
        border: 1.5px solid var(--limit);
        border-radius: var(--round);
        background: var(--limit-wash);
      }

      .not-kept p {
        flex: 1 1 18rem;
      }
    `,
  ];

  /** Whether there is a file of all that was entered. */
  @property({ type: Boolean, attribute: "in-file" }) inFile = false;
  @property({ attribute: false }) keeping: Keeping = { state: "saving" };

  override render() {
    const { keeping } = this;
    if (keeping.state === "saving") return html`<p class="state">Saving …</p>`;
    if (keeping.state === "kept") {
      return keeping.at === ""
        ? nothing
        : html`<p class="state">Kept in this browser, ${TIME.format(new Date(keeping.at))}${this.inFile ? ", and in a file" : " · not in a file yet"}</p>`;
    }
    const { because, problem } = keeping;
    return html`<div class="not-kept" role="alert">
      <p><strong>Not saved:</strong> ${problem.what}. ${problem.cure}</p>
      ${
        because === "elsewhere"
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
