import { css, html, LitElement, nothing, type PropertyValues } from "lit";
import { customElement, property } from "lit/decorators.js";
import { DARK_PALETTE, LIGHT_PALETTE, type Palette } from "../../picture/palette.ts";
import type { ProfilePicture } from "../../picture/profilePicture.ts";
import { controls } from "../style/controls.ts";
import type { DrawnProfile } from "./drawProfile.ts";
import "./profileTable.ts";

const DARK = matchMedia("(prefers-color-scheme: dark)");
const PRINT = matchMedia("print");

/** The profile along the travel, as a chart and on asking as a table. */
@customElement("tightspot-profile-chart")
export class ProfileChart extends LitElement {
  static override styles = [
    controls,
    css`
      .canvas {
        position: relative;
        height: clamp(260px, 42vh, 420px);
        font-family: var(--text);
      }

      figcaption {
        margin-bottom: 0.5rem;
        font-weight: 650;
      }

      summary {
        display: inline-flex;
        align-items: center;
        color: var(--ink);
        text-decoration: underline;
        text-underline-offset: 0.2em;
      }

      @media print {
        details {
          display: none;
        }

        .canvas {
          height: 300px;
        }
      }
    `,
  ];

  @property({ attribute: false }) picture: ProfilePicture | null = null;

  #drawn: DrawnProfile | null = null;

  override connectedCallback(): void {
    super.connectedCallback();
    DARK.addEventListener("change", this.#redraw);
    PRINT.addEventListener("change", this.#redraw);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    DARK.removeEventListener("change", this.#redraw);
    PRINT.removeEventListener("change", this.#redraw);
    this.#drawn?.destroy();
    this.#drawn = null;
  }

  override render() {
    const { picture } = this;
    if (picture === null) return nothing;
    return html`
      <figure>
        <figcaption>${picture.title}</figcaption>
        <div class="canvas"><canvas role="img" aria-label=${picture.description}></canvas></div>
      </figure>
      <details>
        <summary>The same as a table</summary>
        <tightspot-profile-table .picture=${picture}></tightspot-profile-table>
      </details>
    `;
  }

  protected override updated(changed: PropertyValues<this>): void {
    if (changed.has("picture")) void this.#draw();
  }

  async #draw(): Promise<void> {
    const { drawProfile } = await import("./drawProfile.ts");
    const canvas = this.renderRoot.querySelector("canvas");
    // The picture may have changed, or gone, while the drawing was loaded.
    const { picture } = this;
    if (picture === null || canvas === null || !this.isConnected) return;
    const shown = { picture, look: look() };
    if (this.#drawn === null) this.#drawn = drawProfile(canvas, shown);
    else this.#drawn.show(shown);
  }

  readonly #redraw = (): void => {
    void this.#draw();
  };
}

function look(): Palette {
  return DARK.matches && !PRINT.matches ? DARK_PALETTE : LIGHT_PALETTE;
}
