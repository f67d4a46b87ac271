import { css, html, LitElement, nothing } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import type { Assessment } from "../../../analysis/assessment.ts";
import type { KeptDraws } from "../../../analysis/whatIf.ts";
import type { Slide } from "../../../inspection/schema.ts";
import type { Desk } from "../../editing/desk.ts";
import { isOpened } from "../../shell/isOpened.ts";
import { controls } from "../../style/controls.ts";
import { aboutFold, partFold } from "../../style/fold.ts";

/** What other settings would lead to, behind its heading; it is loaded when it is first opened. */
@customElement("tightspot-what-if-part")
export class WhatIfPart extends LitElement {
  static override styles = [
    controls,
    partFold,
    aboutFold,
    css`
      details {
        border-top: 1px solid var(--rule);
      }

      @media print {
        :host {
          display: none;
        }
      }
    `,
  ];

  @property({ attribute: false }) desk: Desk | null = null;
  @property({ attribute: false }) slide: Slide | null = null;
  @property({ attribute: false }) assessment: Assessment | null = null;
  @property({ attribute: false }) kept: KeptDraws | null = null;

  @state() private isOpen = false;

  override render() {
    const { desk, slide, assessment, kept, isOpen } = this;
    return html`<details @toggle=${this.#toggled}>
      <summary>
        <h2>What if?</h2>
        <span class="about">another limit, running clearance or take-up</span>
      </summary>
      ${
        isOpen
          ? html`<tightspot-what-if
              .desk=${desk}
              .slide=${slide}
              .assessment=${assessment}
              .kept=${kept}
            ></tightspot-what-if>`
          : nothing
      }
    </details>`;
  }

  #toggled(event: Event): void {
    this.isOpen = isOpened(event);
    if (this.isOpen) void import("./whatIfPanel.ts");
  }
}
