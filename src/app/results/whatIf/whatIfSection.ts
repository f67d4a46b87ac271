import { html, LitElement, nothing, unsafeCSS } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import type { Assessment } from "../../../analysis/assessment.ts";
import type { RetainedDraws } from "../../../analysis/decide/whatIf.ts";
import type { Slide } from "../../../inspection/schema.ts";
import type { InspectionEditor } from "../../editing/inspectionEditor.ts";
import { isOpen } from "../../ui/isOpen.ts";
import { controls, foldNote, sectionFold } from "../../ui/sharedStyles.ts";
import whatIfSectionCss from "./whatIfSection.css?inline";

/** The section that shows the verdict at other settings, loaded when first opened. */
@customElement("tightspot-what-if-section")
export class WhatIfSection extends LitElement {
  static override styles = [controls, sectionFold, foldNote, unsafeCSS(whatIfSectionCss)];

  @property({ attribute: false }) editor: InspectionEditor | null = null;
  @property({ attribute: false }) slide: Slide | null = null;
  @property({ attribute: false }) assessment: Assessment | null = null;
  @property({ attribute: false }) draws: RetainedDraws | null = null;

  @state() private isOpen = false;

  override render() {
    const { editor, slide, assessment, draws, isOpen } = this;
    return html`<details @toggle=${this.#toggled}>
      <summary>
        <h2>What if?</h2>
        <span class="about">another limit, running clearance or take-up</span>
      </summary>
      ${
        isOpen
          ? html`<tightspot-what-if
              .editor=${editor}
              .slide=${slide}
              .assessment=${assessment}
              .draws=${draws}
            ></tightspot-what-if>`
          : nothing
      }
    </details>`;
  }

  #toggled(event: Event): void {
    this.isOpen = isOpen(event);
    if (this.isOpen) void import("./whatIfPanel.ts");
  }
}
