import { css, html, LitElement, nothing } from "lit";
import { customElement, property } from "lit/decorators.js";
import type { Picture } from "../../inspection/pictures.ts";
import { logDialogStyle } from "../opening/logDialogStyle.ts";
import { controls } from "../style/controls.ts";
import "./photograph.ts";
import { pictureWords } from "./photograph.ts";

declare global {
  interface HTMLElementEventMap {
    /** The photograph that was shown large is shown no more. */
    "tightspot-photograph-done": CustomEvent<null>;
  }
}

/** A photograph as large as it fits the screen. */
@customElement("tightspot-photograph-dialog")
export class PhotographDialog extends LitElement {
  static override styles = [
    controls,
    logDialogStyle,
    css`
      dialog {
        width: fit-content;
        max-width: calc(100vw - 1.5rem);
        padding: 0.75rem;
      }

      tightspot-photograph {
        --fit: contain;

        max-height: calc(100vh - 10rem);
        margin-inline: auto;
        aspect-ratio: var(--shape);
      }

      .foot {
        display: flex;
        flex-wrap: wrap;
        align-items: center;
        justify-content: space-between;
        gap: 0.5rem 1rem;
        margin-top: 0.5rem;
      }

      p {
        flex: 1 1 12rem;
        overflow-wrap: anywhere;
      }
    `,
  ];

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
