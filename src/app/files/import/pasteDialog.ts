import { html, LitElement, unsafeCSS } from "lit";
import { customElement } from "lit/decorators.js";
import { controls } from "../../ui/sharedStyles.ts";
import { PASTED } from "../incomingFiles.ts";
import { requestOpen } from "../openRequest.ts";
import logDialogCss from "./logDialog.css?inline";
import pasteDialogCss from "./pasteDialog.css?inline";

declare global {
  interface HTMLElementEventMap {
    "tightspot-paste-done": CustomEvent<null>;
  }
}

/** A dialog with a field to paste a table into, for devices without a keyboard. */
@customElement("tightspot-paste-dialog")
export class PasteDialog extends LitElement {
  static override styles = [controls, unsafeCSS(logDialogCss), unsafeCSS(pasteDialogCss)];

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
    requestOpen(this, { files: [new File([text], PASTED)] });
    this.renderRoot.querySelector("dialog")?.close();
  }

  #close(): void {
    this.dispatchEvent(new CustomEvent("tightspot-paste-done"));
  }
}
