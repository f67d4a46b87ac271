import { css, html, LitElement, nothing } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import type { Inspection } from "../../inspection/schema.ts";
import type { Desk } from "../editing/desk.ts";
import { isOpened } from "../shell/isOpened.ts";
import { controls } from "../style/controls.ts";
import { aboutFold, partFold } from "../style/fold.ts";

/** The slide's history behind its heading; it is loaded when it is first opened. */
@customElement("tightspot-history-part")
export class HistoryPart extends LitElement {
  static override styles = [
    controls,
    partFold,
    aboutFold,
    css`
      :host {
        margin-top: var(--gap);
      }

      .sheet {
        padding: 0 clamp(0.75rem, 2vw, 1.25rem);
      }

      @media (min-width: 64rem) {
        :host {
          margin-top: 1.5rem;
        }
      }

      @media print {
        details:not([open]) {
          display: none;
        }
      }
    `,
  ];

  @property({ attribute: false }) desk: Desk | null = null;
  @property({ attribute: false }) inspection: Inspection | null = null;
  /** The survey that is shown, by its id. */
  @property() shown = "";

  @state() private isOpen = false;

  override render() {
    const { desk, inspection, shown, isOpen } = this;
    if (inspection === null) return nothing;
    return html`<details class="sheet" @toggle=${this.#toggled}>
      <summary>
        <h2>History</h2>
        <span class="about">${aboutHistory(inspection)}</span>
      </summary>
      ${
        isOpen
          ? html`<tightspot-history .desk=${desk} .inspection=${inspection} .shown=${shown}></tightspot-history>`
          : nothing
      }
    </details>`;
  }

  #toggled(event: Event): void {
    this.isOpen = isOpened(event);
    if (this.isOpen) void import("./historyPanel.ts");
  }
}

function aboutHistory({ surveys, events = [] }: Inspection): string {
  const counted = (count: number, noun: string) => `${count} ${noun}${count === 1 ? "" : "s"}`;
  return events.length === 0
    ? `${counted(surveys.length, "survey")}; what was done to the slide can be noted here`
    : `${counted(surveys.length, "survey")}, ${counted(events.length, "event")}`;
}
