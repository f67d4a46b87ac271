import { css, html, LitElement, nothing } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { controls } from "../style/controls.ts";

/** The verdict in one line at the top of a narrow screen, while the place where this stands is scrolled out above. */
@customElement("tightspot-verdict-bar")
export class VerdictBar extends LitElement {
  static override styles = [
    controls,
    css`
      :host {
        height: 1px;
        margin-bottom: -1px;
      }

      button {
        position: fixed;
        inset: 0 0 auto;
        z-index: 5;
        justify-content: space-between;
        border: 0;
        border-bottom: 1.5px solid var(--ink);
        border-radius: 0;
        background: var(--sheet);
        color: var(--ink-strong);
        text-align: left;
      }

      @media (min-width: 64rem), print {
        button {
          display: none;
        }
      }
    `,
  ];

  @property() text = "";

  @state() private isAbove = false;

  #watch: IntersectionObserver | null = null;

  override connectedCallback(): void {
    super.connectedCallback();
    // As if the screen went on below without end: out of sight is then only what is above it.
    this.#watch = new IntersectionObserver(
      (entries) => {
        this.isAbove = entries.at(-1)?.isIntersecting === false;
      },
      { rootMargin: "0px 0px 1000000px" },
    );
    this.#watch.observe(this);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#watch?.disconnect();
  }

  override render() {
    if (!this.isAbove || this.text === "") return nothing;
    return html`<button type="button" @click=${() => this.parentElement?.scrollIntoView()}>
      ${this.text} <span aria-hidden="true">↑</span>
    </button>`;
  }
}
