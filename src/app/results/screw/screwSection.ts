import { html, LitElement, nothing, unsafeCSS } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import type { Assessment } from "../../../analysis/assessment.ts";
import type { Slide } from "../../../inspection/schema.ts";
import { BeforePrint } from "../../ui/beforePrint.ts";
import { NearViewport } from "../../ui/nearViewport.ts";
import { controls } from "../../ui/sharedStyles.ts";
import screwSectionCss from "./screwSection.css?inline";

/** The section of the screw: drawn once it is near the viewport, or before print. */
@customElement("tightspot-screw-section")
export class ScrewSection extends LitElement {
  static override styles = [controls, unsafeCSS(screwSectionCss)];

  @property({ attribute: false }) assessment: Assessment | null = null;
  @property({ attribute: false }) slide: Slide | null = null;
  @property({ type: Boolean }) repairable = false;

  @state() private isNear = false;

  /** What is drawn. It is updated only near the viewport, so that typing elsewhere redraws nothing. */
  #shown: Pick<ScrewSection, "assessment" | "slide" | "repairable"> | null = null;
  readonly #screen = new NearViewport(this, () => {
    this.isNear = this.#screen.isNear;
  });

  constructor() {
    super();
    new BeforePrint(this, () => {
      this.isNear = true;
    });
  }

  override connectedCallback(): void {
    super.connectedCallback();
    // Loaded at once, so that it is there for an early print.
    void import("./screwPanel.ts");
  }

  protected override willUpdate(): void {
    const { assessment, slide, repairable } = this;
    if (this.isNear) this.#shown = { assessment, slide, repairable };
  }

  /** The words inside the element show until its script is loaded. */
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
