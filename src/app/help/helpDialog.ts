import { html, LitElement, unsafeCSS } from "lit";
import { customElement, property } from "lit/decorators.js";
import { hashOf } from "../ui/route.ts";
import { controls } from "../ui/sharedStyles.ts";
import helpCss from "./help.css?inline";
import helpDialogCss from "./helpDialog.css?inline";
import { helpPart } from "./helpTopic.ts";
import { questionOf, type Topic } from "./topics.ts";

declare global {
  interface HTMLElementEventMap {
    "tightspot-help-done": CustomEvent<null>;
  }
}

/** Help on one topic, over what is being done. */
@customElement("tightspot-help-dialog")
export class HelpDialog extends LitElement {
  static override styles = [controls, unsafeCSS(helpCss), unsafeCSS(helpDialogCss)];

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
