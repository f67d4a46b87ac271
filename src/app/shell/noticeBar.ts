import { css, html, LitElement, nothing } from "lit";
import { customElement, property } from "lit/decorators.js";
import { controls } from "../style/controls.ts";
import type { Notice } from "./notice.ts";

/** The one notice that is shown; it stays until it is dismissed, acted upon or followed by another. */
@customElement("tightspot-notice-bar")
export class NoticeBar extends LitElement {
  static override styles = [
    controls,
    css`
      :host {
        position: fixed;
        inset: auto 0 0;
        z-index: 10;
        display: flex;
        justify-content: center;
        padding: 0 var(--edge) max(1rem, env(safe-area-inset-bottom));
        pointer-events: none;
      }

      .notice {
        display: flex;
        align-items: center;
        gap: 0.25rem;
        max-width: 44rem;
        padding: 0.375rem 0.375rem 0.375rem 1.125rem;
        border-radius: calc(var(--round) * 1.5);
        background: var(--ink-strong);
        color: var(--paper);
        box-shadow: 0 12px 32px -8px rgb(0 0 0 / 45%);
        pointer-events: auto;
      }

      .notice.wrong {
        border-left: 8px solid var(--limit);
      }

      p {
        flex: 1;
        padding: 0.5rem 0;
        font-size: 1rem;
        color: inherit;
      }

      button {
        padding-inline: 0.875rem;
        border-color: transparent;
        background: transparent;
        color: inherit;
      }

      button:hover {
        background: rgb(128 128 128 / 30%);
      }

      .act {
        text-decoration: underline;
        text-underline-offset: 0.2em;
      }

      @media print {
        :host {
          display: none;
        }
      }
    `,
  ];

  @property({ attribute: false }) notice: Notice | null = null;

  override render() {
    const { notice } = this;
    return html`<div role=${notice?.tone === "wrong" ? "alert" : "status"}>
      ${
        notice === null
          ? nothing
          : html`<div class="notice ${notice.tone}">
              <p>${notice.text}</p>
              ${
                notice.action &&
                html`<button type="button" class="act" @click=${this.#act}>${notice.action.label}</button>`
              }
              <button type="button" aria-label="Dismiss" @click=${this.#dismiss}>✕</button>
            </div>`
      }
    </div>`;
  }

  #act(): void {
    const act = this.notice?.action?.act;
    this.#dismiss();
    act?.();
  }

  #dismiss(): void {
    this.notice = null;
  }
}
