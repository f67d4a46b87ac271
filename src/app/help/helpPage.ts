import { html, LitElement, nothing, type PropertyValues, unsafeCSS } from "lit";
import { customElement, property } from "lit/decorators.js";
import { EDITION } from "../../records/edition.ts";
import { hashOf } from "../ui/route.ts";
import { controls } from "../ui/sharedStyles.ts";
import helpCss from "./help.css?inline";
import helpPageCss from "./helpPage.css?inline";
import { helpPart } from "./helpTopic.ts";
import { isTopic, TOPICS } from "./topics.ts";

/** All help, one topic under the other, at the one that the address names. */
@customElement("tightspot-help")
export class HelpPage extends LitElement {
  static override styles = [controls, unsafeCSS(helpCss), unsafeCSS(helpPageCss)];

  /** Where to begin; any other word than a topic is the top. */
  @property() topic = "";

  override render() {
    return html`
      <div>
        <h1>Help</h1>
        <nav aria-label="Topics">
          <ul>
            ${TOPICS.map(
              ([topic, question]) => html`<li>
                <a href=${hashOf({ at: "help", topic })} @click=${() => this.#show(topic)}>${question}</a>
              </li>`,
            )}
          </ul>
        </nav>
      </div>
      ${TOPICS.map(
        ([topic, question]) => html`<section class="sheet" id=${topic} aria-labelledby="on-${topic}">
          <h2 id="on-${topic}" tabindex="-1">${question}</h2>
          ${helpPart(topic)}
        </section>`,
      )}
      ${
        EDITION === "file"
          ? nothing
          : html`<p class="screen-only">
              <a href="licences.txt" target="_blank">Licences of the libraries that this program is made with</a>
            </p>`
      }
    `;
  }

  protected override updated(changed: PropertyValues<this>): void {
    document.title = "Help · Tightspot";
    if (changed.has("topic")) this.#show(this.topic);
  }

  #show(topic: string): void {
    if (!isTopic(topic)) {
      window.scrollTo(0, 0);
      return;
    }
    this.renderRoot.querySelector(`#${topic}`)?.scrollIntoView();
    this.renderRoot.querySelector<HTMLElement>(`#on-${topic}`)?.focus({ preventScroll: true });
  }
}
