import { css, html, LitElement } from "lit";
import { customElement } from "lit/decorators.js";
import { askToOpen } from "../shell/opening.ts";
import { PASTED } from "../shell/pastes.ts";
import { controls } from "../style/controls.ts";
import { logDialogStyle } from "./logDialogStyle.ts";

declare global {
  interface HTMLElementEventMap {
    "tightspot-paste-done": CustomEvent<null>;
  }
}

/** A field to paste a table into, for devices without a key for that. */
@customElement("tightspot-paste-dialog")
export class PasteDialog extends LitElement {
  static override styles = [
    controls,
    logDialogStyle,
    css`
      textarea {
        min-height: 14rem;
        resize: vertical;
      }
    `,
  ];

  override firstUpdated(): void {
    this.renderRoot.querySelector("dialog")?.showModal();
  }

  override render() {
    return html`<dialog aria-labelledby="title" @close=${this.#close}>
      <form method="dialog" class="content">
        <h2 id="title">Paste readings</h2>
        <label>
          <span class="label">A table with its headings, from a spreadsheet, a message or a log</span>
          <textarea autofocus spellcheck="false" wrap="off"></textarea>
        </label>
        <div class="choices">
          <button type="button" class="chief" @click=${this.#read}>Read it</button>
          <button class="quiet">Cancel</button>
        </div>
      </form>
    </dialog>`;
  }

  #read(): void {
    const text = this.renderRoot.querySelector("textarea")?.value ?? "";
    askToOpen(this, { files: [new File([text], PASTED)] });
    this.renderRoot.querySelector("dialog")?.close();
  }

  #close(): void {
    this.dispatchEvent(new CustomEvent("tightspot-paste-done"));
  }
}
