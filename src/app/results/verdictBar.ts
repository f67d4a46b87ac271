import { html, LitElement, nothing, unsafeCSS } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { controls } from "../ui/sharedStyles.ts";
import verdictBarCss from "./verdictBar.css?inline";

/** The verdict in one line at the top of a narrow screen, while this element itself is scrolled out above it. */
@customElement("tightspot-verdict-bar")
export class VerdictBar extends LitElement {
  static override styles = [controls, unsafeCSS(verdictBarCss)];

  @property() text = "";

  @state() private isAbove = false;

  #watch: IntersectionObserver | null = null;

  override connectedCallback(): void {
    super.connectedCallback();
    // With a viewport that is endless below, only what is above it does not intersect.
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
