import { css, html, LitElement } from "lit";
import { customElement, property } from "lit/decorators.js";
import { hashOf } from "../shell/route.ts";
import { controls } from "../style/controls.ts";
import { helpPart } from "./helpPart.ts";
import { helpStyle } from "./helpStyle.ts";
import { questionOf, type Topic } from "./topics.ts";

declare global {
  interface HTMLElementEventMap {
    "tightspot-help-done": CustomEvent<null>;
  }
}

/** Help on one topic, over what is being done. */
@customElement("tightspot-help-dialog")
export class HelpDialog extends LitElement {
  static override styles = [
    controls,
    helpStyle,
    css`
      dialog {
        width: min(44rem, calc(100vw - 1.5rem));
        max-height: calc(100vh - 1.5rem);
        padding: var(--gap-wide);
        border: 1.5px solid var(--ink);
        border-radius: calc(var(--round) * 1.5);
        background: var(--sheet);
        color: inherit;
      }

      dialog::backdrop {
        background: rgb(12 38 71 / 45%);
      }

      form {
        display: grid;
        grid-template-columns: minmax(0, 1fr);
        gap: var(--gap);
      }

      .part:has(> svg) {
        grid-template-columns: minmax(0, 1fr);
      }

      .part > svg {
        order: 0;
      }

      .choices {
        display: flex;
        flex-wrap: wrap;
        gap: 0.5rem;
      }
    `,
  ];

  @property() topic: Topic = "backlash";

  override firstUpdated(): void {
    this.renderRoot.querySelector("dialog")?.showModal();
  }

  override render() {
    return html`<dialog
      aria-labelledby="title"
      @close=${() => this.dispatchEvent(new CustomEvent("tightspot-help-done"))}
    >
      <form method="dialog">
        <h2 id="title">${questionOf(this.topic)}</h2>
        ${helpPart(this.topic)}
        <div class="choices">
          <button class="chief" autofocus>Close</button>
          <a class="button" href=${hashOf({ at: "help", topic: this.topic })} target="_blank">
            All help, in another tab
          </a>
        </div>
      </form>
    </dialog>`;
  }
}
