import { css, html, LitElement, nothing } from "lit";
import { customElement, property } from "lit/decorators.js";
import { repeat } from "lit/directives/repeat.js";
import { controls } from "../style/controls.ts";
import type { Notice } from "./notice.ts";

/** The notices, at the foot of the screen. Long ones and many scroll, so that the page stays in sight above them. */
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

      .notices {
        display: grid;
        gap: 1px;
        max-width: 44rem;
        max-height: 30vh;
        overflow-y: auto;
        overscroll-behavior: contain;
        border-radius: calc(var(--round) * 1.5);
        box-shadow: 0 12px 32px -8px rgb(0 0 0 / 45%);
        pointer-events: auto;
      }

      .notices > div {
        display: grid;
        gap: 1px;
      }

      .notice {
        display: flex;
        align-items: center;
        gap: 0.25rem;
        padding: 0.375rem 0.375rem 0.375rem 1.125rem;
        background: var(--ink-strong);
        color: var(--paper);
      }

      .notice.wrong {
        border-left: 8px solid var(--limit);
      }

      p {
        flex: 1;
        max-height: max(4.5rem, 15vh);
        overflow-y: auto;
        overscroll-behavior: contain;
        padding: 0.5rem 0;
        color: inherit;
        font-size: 1rem;
        line-height: 1.4;
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

  @property({ attribute: false }) notices: readonly Notice[] = [];

  override render() {
    // Both are there from the start: a screen reader speaks what is put into them, and only that.
    return html`<div class="notices">
      <div role="alert" aria-atomic="false">${this.#list("wrong")}</div>
      <div role="status" aria-atomic="false">${this.#list("done")}</div>
    </div>`;
  }

  #list(tone: Notice["tone"]) {
    return repeat(
      this.notices.filter((notice) => notice.tone === tone),
      (notice) => notice,
      (notice) => html`<div class="notice ${tone}">
        <p tabindex=${tone === "wrong" ? 0 : nothing}>${notice.text}</p>
        ${
          notice.action &&
          html`<button type="button" class="act" @click=${() => this.#act(notice)}>
            ${notice.action.label}
          </button>`
        }
        <button type="button" aria-label="Dismiss" @click=${() => this.#dismiss(notice)}>✕</button>
      </div>`,
    );
  }

  #act(notice: Notice): void {
    this.#dismiss(notice);
    notice.action?.act();
  }

  #dismiss(notice: Notice): void {
    this.dispatchEvent(new CustomEvent("tightspot-notice-done", { detail: notice }));
  }
}
