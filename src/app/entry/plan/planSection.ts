import { html, LitElement, nothing, unsafeCSS } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import type { Slide, Survey } from "../../../inspection/schema.ts";
import type { InspectionEditor } from "../../editing/inspectionEditor.ts";
import type { Row } from "../../editing/rows.ts";
import { isOpen } from "../../ui/isOpen.ts";
import { controls, foldNote, sectionFold } from "../../ui/sharedStyles.ts";
import planSectionCss from "./planSection.css?inline";

/** The measuring plan behind its heading; it is loaded when it is first opened. */
@customElement("tightspot-plan-section")
export class PlanSection extends LitElement {
  static override styles = [controls, sectionFold, foldNote, unsafeCSS(planSectionCss)];

  @property({ attribute: false }) editor: InspectionEditor | null = null;
  @property({ attribute: false }) slide: Slide | null = null;
  @property({ attribute: false }) survey: Survey | null = null;
  @property({ attribute: false }) rows: readonly Row[] = [];

  @state() private isOpen = false;

  override render() {
    const { editor, slide, survey, rows, isOpen } = this;
    if (slide === null) return nothing;
    return html`<details class="sheet" @toggle=${this.#toggled}>
      <summary>
        <h2>Measuring plan</h2>
        <span class="about">where to read, and a sheet to write on</span>
      </summary>
      ${
        isOpen
          ? html`<tightspot-plan .editor=${editor} .slide=${slide} .survey=${survey} .rows=${rows}></tightspot-plan>`
          : nothing
      }
    </details>`;
  }

  #toggled(event: Event): void {
    this.isOpen = isOpen(event);
    if (this.isOpen) void import("./planPanel.ts");
  }
}
