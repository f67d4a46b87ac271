import { html, LitElement, unsafeCSS } from "lit";
import { customElement, property } from "lit/decorators.js";
import { isOpen } from "./isOpen.ts";
import menuCss from "./menu.css?inline";
import { controls } from "./sharedStyles.ts";

/** A button that opens a list of choices. */
@customElement("tightspot-menu")
export class Menu extends LitElement {
  static override styles = [controls, unsafeCSS(menuCss)];

  @property() label = "";

  override render() {
    return html`<details @keydown=${this.#onKey} @toggle=${this.#onToggle}>
      <summary>${this.label}</summary>
      <div class="choices"><slot></slot></div>
    </details>`;
  }

  close(): void {
    const details = this.renderRoot.querySelector("details");
    if (details === null) return;
    details.open = false;
    details.querySelector("summary")?.focus();
  }

  #onKey({ key }: KeyboardEvent): void {
    if (key === "Escape") this.close();
  }

  #onToggle(event: Event): void {
    const isShown = isOpen(event);
    this.dispatchEvent(new CustomEvent("tightspot-menu-toggle", { detail: isShown }));
  }
}

declare global {
  interface HTMLElementEventMap {
    /** Whether the menu is open now. */
    "tightspot-menu-toggle": CustomEvent<boolean>;
  }
}
