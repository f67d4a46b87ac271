import { css, html, LitElement } from "lit";
import { customElement, property } from "lit/decorators.js";
import { controls } from "../style/controls.ts";
import { questionOf, type Topic } from "./topics.ts";

declare global {
  interface HTMLElementEventMap {
    /** Asks for help on a topic, in place. */
    "tightspot-about": CustomEvent<Topic>;
  }
}

/** A small mark beside a term that leads to what it means. */
@customElement("tightspot-about")
export class AboutLink extends LitElement {
  static override styles = [
    controls,
    css`
      button {
        width: var(--target);
        padding: 0;
        border: 0;
        background: none;
        color: var(--ink-pale);
      }

      button:hover {
        background: none;
      }

      span {
        display: grid;
        place-items: center;
        width: 1.25rem;
        height: 1.25rem;
        border: 1px solid currentColor;
        border-radius: 50%;
        font-size: 0.75rem;
        line-height: 1;
      }

      button:hover span {
        background: var(--wash);
      }
    `,
  ];

  @property() topic: Topic = "backlash";

  override render() {
    return html`<button type="button" aria-label=${questionOf(this.topic)} @click=${this.#ask}>
      <span aria-hidden="true">?</span>
    </button>`;
  }

  #ask(): void {
    const event = new CustomEvent("tightspot-about", { detail: this.topic, bubbles: true, composed: true });
    this.dispatchEvent(event);
  }
}
