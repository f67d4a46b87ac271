import { html, LitElement, nothing, unsafeCSS } from "lit";
import { customElement, property } from "lit/decorators.js";
import type { Picture } from "../../inspection/pictures.ts";
import { controls } from "../ui/sharedStyles.ts";
import "./photograph.ts";
import logDialogCss from "../files/import/logDialog.css?inline";
import { pictureWords } from "./photograph.ts";
import photographDialogCss from "./photographDialog.css?inline";

declare global {
  interface HTMLElementEventMap {
    /** The photograph that was shown large is shown no more. */
    "tightspot-photograph-done": CustomEvent<null>;
  }
}

/** A photograph as large as it fits the screen. */
@customElement("tightspot-photograph-dialog")
export class PhotographDialog extends LitElement {
  static override styles = [controls, unsafeCSS(logDialogCss), unsafeCSS(photographDialogCss)];

  @property({ attribute: false }) picture: Picture | null = null;

  override firstUpdated(): void {
    this.renderRoot.querySelector("dialog")?.showModal();
  }

  override render() {
    const { picture } = this;
    if (picture === null) return nothing;
    const words = pictureWords(picture);
    return html`<dialog aria-label=${words} @close=${this.#close}>
      <tightspot-photograph
        style="--shape: ${picture.width} / ${picture.height}; width: ${picture.width}px; max-width: 100%"
        .picture=${picture}
      ></tightspot-photograph>
      <form method="dialog" class="foot">
        <p>${words}</p>
        <button autofocus>Close</button>
      </form>
    </dialog>`;
  }

  #close(): void {
    this.dispatchEvent(new CustomEvent("tightspot-photograph-done"));
  }
}
