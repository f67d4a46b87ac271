import { html, LitElement, nothing, unsafeCSS } from "lit";
import { customElement, property } from "lit/decorators.js";
import { repeat } from "lit/directives/repeat.js";
import type { Notice } from "./notice.ts";
import noticeBarCss from "./noticeBar.css?inline";
import { controls } from "./sharedStyles.ts";

/** The notices at the bottom of the screen; they scroll if they take too much of it. */
@customElement("tightspot-notice-bar")
export class NoticeBar extends LitElement {
  static override styles = [controls, unsafeCSS(noticeBarCss)];

  @property({ attribute: false }) notices: readonly Notice[] = [];

  override render() {
    // Both are always present: a screen reader speaks what is added to them.
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
