import { css, html, LitElement, nothing } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import type { Assessment } from "../../analysis/assessment.ts";
import type { Slide } from "../../inspection/schema.ts";
import { ForPaper } from "../shell/forPaper.ts";
import { NearScreen } from "../shell/nearScreen.ts";
import { controls } from "../style/controls.ts";

/** The place of the screw on the page: it is loaded, and drawn, once it comes near the screen or is printed. */
@customElement("tightspot-screw-part")
export class ScrewPart extends LitElement {
  static override styles = [
    controls,
    css`
      :host {
        container-type: inline-size;
        padding-top: var(--gap);
        border-top: 1px solid var(--rule);
      }

      /* As high as what will stand here, so that nothing below it moves when it comes. */
      .place {
        min-height: 73rem;
      }

      @container (min-width: 18rem) {
        .place {
          min-height: 68rem;
        }
      }

      @container (min-width: 26rem) {
        .place {
          min-height: 65rem;
        }
      }

      @container (min-width: 38rem) {
        .place {
          min-height: 43rem;
        }
      }

      @media print {
        .place {
          min-height: 0;
        }
      }
    `,
  ];

  @property({ attribute: false }) assessment: Assessment | null = null;
  @property({ attribute: false }) slide: Slide | null = null;
  @property({ type: Boolean }) repairable = false;

  @state() private isNear = false;

  /** What is drawn: it follows only while it may be seen, so that typing elsewhere draws nothing. */
  #shown: Pick<ScrewPart, "assessment" | "slide" | "repairable"> | null = null;
  readonly #screen = new NearScreen(this, () => {
    this.isNear = this.#screen.isNear;
  });

  constructor() {
    super();
    new ForPaper(this, () => {
      this.isNear = true;
    });
  }

  override connectedCallback(): void {
    super.connectedCallback();
    // So that it is there to be printed, however soon that is asked for.
    void import("./screwPanel.ts");
  }

  protected override willUpdate(): void {
    const { assessment, slide, repairable } = this;
    if (this.isNear) this.#shown = { assessment, slide, repairable };
  }

  /** Until it is loaded, the words in the place of the drawing are shown. */
  override render() {
    const shown = this.#shown;
    return html`<div class="place">
      ${
        shown === null
          ? nothing
          : html`<tightspot-screw
              .assessment=${shown.assessment}
              .slide=${shown.slide}
              .repairable=${shown.repairable}
            >
              <p class="paper-only">
                The drawing of the screw is not here: this was printed before it was loaded. Print it again to have it.
              </p>
            </tightspot-screw>`
      }
    </div>`;
  }
}
