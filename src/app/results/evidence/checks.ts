import { html, nothing } from "lit";
import type { EvidencePartMaker } from "./evidencePart.ts";

declare global {
  interface HTMLElementEventMap {
    /** A reading to go to, 0-based in file order. */
    "tightspot-go-to-reading": CustomEvent<number>;
  }
}

const SEVERITIES = { stop: "Stops the verdict", warning: "Warning", note: "Note" } as const;

/** A check that names more readings than these is about the survey, and leads to none of them. */
const MOST_TO_GO_TO = 6;

/** What the checks found, with the readings that they name. */
export const checks: EvidencePartMaker = ({ assessment }) => {
  const findings = assessment.checks;
  if (findings.length === 0) return null;
  return {
    title: `Checks on the readings (${findings.length})`,
    isOpen: findings.some(({ severity }) => severity !== "note"),
    content: html`<ul class="lines checks">
      ${findings.map(
        ({ check, severity, message, readings }) => html`<li class=${severity}>
          <p><strong>${SEVERITIES[severity]}: ${check}.</strong> ${message}</p>
          ${readings.length > MOST_TO_GO_TO ? nothing : ways(readings)}
        </li>`,
      )}
    </ul>`,
  };
};

function ways(readings: readonly number[]) {
  if (readings.length === 0) return nothing;
  return html`<p class="go screen-only">
    ${readings.map(
      (reading) => html`<button
        type="button"
        class="quiet"
        @click=${({ target }: Event) => goTo(target, reading)}
      >
        Reading ${reading + 1}
      </button>`,
    )}
  </p>`;
}

function goTo(from: EventTarget | null, reading: number): void {
  const event = new CustomEvent("tightspot-go-to-reading", {
    detail: reading,
    bubbles: true,
    composed: true,
  });
  from?.dispatchEvent(event);
}
