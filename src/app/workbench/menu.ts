import { css, html, LitElement } from "lit";
import { customElement, property } from "lit/decorators.js";
import { isOpened } from "../shell/isOpened.ts";
import { controls } from "../style/controls.ts";

/** Choices behind a word of the bar. */
@customElement("tightspot-menu")
export class Menu extends LitElement {
  static override styles = [
    controls,
    css`
      details {
        position: relative;
      }

      summary {
        display: flex;
        align-items: center;
        padding: 0.5rem clamp(0.5rem, 2vw, 1rem);
        border-radius: var(--round);
        color: var(--ink);
        font-weight: 600;
        line-height: 1.2;
        list-style: none;
      }

      summary::-webkit-details-marker {
        display: none;
      }

      summary::after {
        content: "▾";
        margin-left: 0.375rem;
      }

      summary:hover {
        background: var(--wash);
      }

      .choices {
        position: absolute;
        right: 0;
        z-index: 5;
        display: grid;
        gap: 0.25rem;
        width: max-content;
        max-width: 90vw;
        padding: 0.375rem;
        border: 1.5px solid var(--ink);
        border-radius: var(--round);
        background: var(--sheet);
        box-shadow: var(--shadow);
      }
    `,
  ];

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
    const isOpen = isOpened(event);
    this.dispatchEvent(new CustomEvent("tightspot-menu-toggle", { detail: isOpen }));
  }
}

declare global {
  interface HTMLElementEventMap {
    /** Whether the menu is open now. */
    "tightspot-menu-toggle": CustomEvent<boolean>;
  }
}
