import { html, LitElement, unsafeCSS } from "lit";
import { customElement, property } from "lit/decorators.js";
import { controls } from "../ui/sharedStyles.ts";
import aboutLinkCss from "./aboutLink.css?inline";
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
  static override styles = [controls, unsafeCSS(aboutLinkCss)];

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
