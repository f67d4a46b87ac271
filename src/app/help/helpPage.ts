import { css, html, LitElement, nothing, type PropertyValues } from "lit";
import { customElement, property } from "lit/decorators.js";
import { EDITION } from "../../records/edition.ts";
import { hashOf } from "../shell/route.ts";
import { controls } from "../style/controls.ts";
import { helpPart } from "./helpPart.ts";
import { helpStyle } from "./helpStyle.ts";
import { isTopic, TOPICS } from "./topics.ts";

/** All help, one topic under the other, at the one that the address names. */
@customElement("tightspot-help")
export class HelpPage extends LitElement {
  static override styles = [
    controls,
    helpStyle,
    css`
      :host {
        display: grid;
        grid-template-columns: minmax(0, 1fr);
        gap: var(--gap-wide);
        max-width: 68rem;
        margin: 0 auto;
        padding-top: clamp(0.5rem, 2vw, 1.5rem);
      }

      h1 {
        font-size: var(--title);
        font-weight: 750;
      }

      nav ul {
        display: grid;
        grid-template-columns: repeat(auto-fill, minmax(min(100%, 18rem), 1fr));
        gap: 0 var(--gap);
        margin-top: 0.5rem;
      }

      nav a {
        display: flex;
        align-items: center;
        min-height: var(--target);
      }

      section {
        display: grid;
        grid-template-columns: minmax(0, 1fr);
        gap: 0.75rem;
        scroll-margin-top: 1rem;
      }

      h2 {
        font-size: 1.5rem;
      }

      h2:focus-visible {
        outline: none;
      }

      @media print {
        nav {
          display: none;
        }

        .sheet {
          padding-bottom: 1rem;
        }
      }
    `,
  ];

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
