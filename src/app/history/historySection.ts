import { html, LitElement, nothing, unsafeCSS } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import type { Inspection } from "../../inspection/schema.ts";
import type { InspectionEditor } from "../editing/inspectionEditor.ts";
import { isOpen } from "../ui/isOpen.ts";
import { controls, foldNote, sectionFold } from "../ui/sharedStyles.ts";
import historySectionCss from "./historySection.css?inline";

/** The slide's history behind its heading; it is loaded when it is first opened. */
@customElement("tightspot-history-section")
export class HistorySection extends LitElement {
  static override styles = [controls, sectionFold, foldNote, unsafeCSS(historySectionCss)];

  @property({ attribute: false }) editor: InspectionEditor | null = null;
  @property({ attribute: false }) inspection: Inspection | null = null;
  /** The survey that is shown, by its id. */
  @property() shown = "";

  @state() private isOpen = false;

  override render() {
    const { editor, inspection, shown, isOpen } = this;
    if (inspection === null) return nothing;
    return html`<details class="sheet" @toggle=${this.#toggled}>
      <summary>
        <h2>History</h2>
        <span class="about">${aboutHistory(inspection)}</span>
      </summary>
      ${
        isOpen
          ? html`<tightspot-history .editor=${editor} .inspection=${inspection} .shown=${shown}></tightspot-history>`
          : nothing
      }
    </details>`;
  }

  #toggled(event: Event): void {
    this.isOpen = isOpen(event);
    if (this.isOpen) void import("./historyPanel.ts");
  }
}

function aboutHistory({ surveys, events = [] }: Inspection): string {
  const counted = (count: number, noun: string) => `${count} ${noun}${count === 1 ? "" : "s"}`;
  return events.length === 0
    ? `${counted(surveys.length, "survey")}; what was done to the slide can be noted here`
    : `${counted(surveys.length, "survey")}, ${counted(events.length, "event")}`;
}
